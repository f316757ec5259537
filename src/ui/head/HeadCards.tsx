import { cardOf } from '../../design/head-cards.ts';
import type { HeadSpec } from '../../design/spec.ts';
import { meanGirth } from '../../head/girth.ts';
import { keepHead, removeHead, takeHead } from '../../state/heads.ts';
import { useStudio } from '../../state/studio.ts';
import { formatLength } from '../../units.ts';
import { focusHeading } from '../focus.ts';
import { Going } from '../Going.tsx';
import { Figures } from '../Said.tsx';
import { same } from '../same.ts';

/** The heads that are kept, to measure the cap on the table for another of them. */
export const HeadCards = () => {
  const heads = useStudio((s) => s.heads);
  const head = useStudio((s) => s.wish.head);
  const card = cardOf(heads, head);
  return (
    <details className="head-cards">
      <summary>Head cards</summary>
      {heads.length > 0 && (
        <ul>
          {heads.map((one) => (
            <Card key={one.name} head={one} isHere={one === card} />
          ))}
        </ul>
      )}
      <Keep head={head} card={card} />
    </details>
  );
};

const Card = ({ head, isHere }: { readonly head: HeadSpec; readonly isHere: boolean }) => {
  const unit = useStudio((s) => s.wish.unit);
  const girth = meanGirth(head.readings);
  const name = nameOf(head);
  return (
    <li aria-current={isHere || undefined}>
      <button type="button" className="row" onClick={() => takeHead(head)}>
        {name}
      </button>
      <span>{girth !== null && <Figures text={formatLength(girth, unit)} />}</span>
      <button
        type="button"
        aria-label={`Remove the head card of ${name}`}
        onClick={({ currentTarget }) => {
          focusHeading(currentTarget);
          removeHead(head);
        }}
      >
        Remove
      </button>
    </li>
  );
};

/** Whether the head on the table stands on a card as it is, and what can be done where it does not. */
const Keep = ({ head, card }: { readonly head: HeadSpec; readonly card: HeadSpec | undefined }) => {
  if (card === undefined) {
    return (
      <p>
        <Going onPress={keepHead}>Keep this head as a card</Going>
      </p>
    );
  }
  if (same(card, head)) return <p className="help">This head stands on its card.</p>;
  return (
    <div className="remark">
      <p>The card of {nameOf(head)} says something else.</p>
      <p className="actions">
        <Going onPress={keepHead}>Bring the card up to date</Going>
        <Going onPress={() => takeHead(card)}>Take what the card says</Going>
      </p>
    </div>
  );
};

const nameOf = ({ name }: HeadSpec): string => (name.trim() === '' ? 'A head without a name' : name.trim());
