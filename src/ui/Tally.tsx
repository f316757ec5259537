import type { ReactNode } from 'react';
import type { Detail } from '../state/state.ts';
import { useStudio } from '../state/studio.ts';
import { useFirstInTheWay } from '../state/use-problems.ts';
import { mm, type Words, words } from '../words.ts';
import { openDetail } from './details/DetailPanel.tsx';
import { useSheets } from './paper/use-sheets.ts';
import { Said } from './Said.tsx';
import { walkTo, walkToField } from './stages/forms.ts';
import { useInShort } from './use-in-short.ts';

/** The numbers that matter, always in sight. Each opens how it comes about. */
export const Tally = () => {
  const cap = useInShort();
  const tried = useStudio((s) => s.trial !== null);
  const stopped = useStudio((s) => s.wish !== s.good);
  if (cap === null) return null;
  return (
    <section className="tally" aria-label="The tally">
      <div>
        <div className="tally-says" aria-live="polite">
          {tried && <p className="remark">The table shows a change on trial.</p>}
          {stopped && !tried && <Stopped />}
        </div>
        <Item detail="inside" name="Inside" figure={words`${mm(cap.finishedGirth)}`} />
        {cap.facts.map(({ id, name, figure }) => (
          <Item key={id} detail={`fact.${id}`} name={name} figure={figure} />
        ))}
        <Item detail="seams" figure={[`${cap.meeting} of ${cap.seams}`]} name="seams meet" after />
        <Sheets />
        <Item detail="piece" name="Show the arithmetic" />
      </div>
    </section>
  );
};

/** Says why the table does not show what is wished. */
const Stopped = () => {
  const field = useFirstInTheWay();
  return (
    <p className="remark">
      The table shows the last cap that can be sewn.{' '}
      {field !== null && (
        <button type="button" onClick={() => void walkToField(field)}>
          What is in the way?
        </button>
      )}
    </p>
  );
};

interface ItemProps {
  readonly detail: Detail;
  readonly name: string;
  readonly figure?: Words;
  /** The name stands after its figure. */
  readonly after?: boolean;
}

const Item = ({ detail, name, figure, after = false }: ItemProps) => {
  const isOpen = useStudio((s) => s.detail === detail);
  const shown: ReactNode = figure && (
    <b>
      <Said words={figure} />
    </b>
  );
  return (
    <button
      type="button"
      aria-expanded={isOpen}
      aria-controls="detail"
      onClick={() => void openDetail(isOpen ? null : detail)}
    >
      {after ? shown : name} {after ? name : shown}
    </button>
  );
};

const Sheets = () => {
  const { set } = useSheets();
  if (set === null) return null;
  const count = set.sheets.length;
  return (
    <button type="button" onClick={() => void walkTo('paper')}>
      <b>{count}</b> {count === 1 ? 'sheet' : 'sheets'}
    </button>
  );
};
