import { copyCap, startCap } from '../../state/shelf.ts';
import { isOfDemo } from '../../state/shelved.ts';
import { useStudio } from '../../state/studio.ts';
import { CapOnShelf, CapOnTable } from './CapOnShelf.tsx';
import { ShelfFiles } from './ShelfFiles.tsx';
import './shelf.css';

/** The caps saved on this device, the latest first; the one on the table is among them. */
export const Shelf = () => {
  const shelf = useStudio((s) => s.shelf);
  const capId = useStudio((s) => s.capId);
  const head = useStudio((s) => s.wish.head);
  const wearer = head.name.trim();
  const caps = [...shelf, null].sort((a, b) => (b?.id ?? capId) - (a?.id ?? capId));
  return (
    <>
      <p className="lead">
        Caps kept in this browser. Whatever you change on the table is kept as you go; Undo brings back what
        was removed.
        {shelf.some(isOfDemo) &&
          ' Those of the brass band by the canal are invented, to try things on: remove them when you like.'}
      </p>
      <p className="actions">
        <button type="button" className="main" onClick={() => startCap(head)}>
          New cap{wearer === '' ? '' : ` for ${wearer}`}
        </button>
        <button type="button" onClick={copyCap}>
          Go on with a copy
        </button>
      </p>
      <ul className="shelf">
        {caps.map((cap) =>
          cap === null ? <CapOnTable key={capId} /> : <CapOnShelf key={cap.id} cap={cap} />,
        )}
      </ul>
      <ShelfFiles />
    </>
  );
};
