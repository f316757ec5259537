import { useState } from 'react';
import { putBeside } from '../../state/cloth-actions.ts';
import { savedName } from '../../state/shelved.ts';
import { useStudio } from '../../state/studio.ts';
import { CapCount } from './CapCount.tsx';
import { useLay } from './use-lay.ts';

/** Which caps of the shelf are cut from the same cloth, and how many of each. */
export const Besides = () => {
  const shelf = useStudio((s) => s.shelf);
  const { besides } = useStudio((s) => s.lay);
  const { unsewn } = useLay();
  const [openAtFirst] = useState(() => Object.values(besides).some((count) => count > 0));
  if (shelf.length === 0) return null;
  return (
    <details open={openAtFirst}>
      <summary>With caps from the shelf</summary>
      {shelf.map((cap) => (
        <CapCount
          key={cap.id}
          label={savedName(cap) || 'A cap without a name'}
          least={0}
          count={besides[cap.id] ?? 0}
          onCount={(count) => putBeside(cap.id, count)}
        />
      ))}
      <p className="help">All are cut from this cloth: its thickness and its shrinkage count for each.</p>
      {unsewn.map((name) => (
        <p className="problem" key={name}>
          {name} cannot be sewn in this cloth. Take it to the table to see why.
        </p>
      ))}
    </details>
  );
};
