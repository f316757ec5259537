import { useEffect, useState } from 'react';
import { styleOf } from '../../caps/registry.ts';
import type { Draft } from '../../design/draft.ts';
import { type FindingId, findings } from '../../guide/fitting/findings.ts';
import { type FitChange, type Fitting as Fits, fittingOf } from '../../guide/fitting/fitting-of.ts';
import type { Problem } from '../../pattern/problem.ts';
import { putBack } from '../../state/actions.ts';
import { useStudio } from '../../state/studio.ts';
import { inTheWayOf, keepFit, tryOn } from '../../state/try-on.ts';
import { stillStands, type Typed } from '../../state/typed.ts';
import { formatLength, parseLength, type Unit } from '../../units.ts';
import { focusHeading } from '../focus.ts';
import { rowValue } from '../row-value.ts';
import { Figures, Said } from '../Said.tsx';
import { today } from '../today.ts';
import { FitNotes } from './FitNotes.tsx';

/** A length that pins or a tape told, mm, with the words it was typed in; null where none is asked for. */
type Told = (Typed & { readonly value: number }) | null;

/** What the wearer says of the cap on the head, what it comes from, and what to change. */
export const Fitting = ({ draft }: { readonly draft: Draft }) => {
  const tried = useStudio((s) => s.trial !== null);
  const [found, setFound] = useState<Readonly<Partial<Record<FindingId, Told>>>>({});
  const wish = useStudio((s) => s.wish);
  const { unit } = wish;
  useEffect(() => () => void putBack(), []);
  const fits = fittingOf(
    findings.flatMap(({ id }) => {
      const told = found[id];
      if (told === undefined) return [];
      if (told === null) return [{ id }];
      // What cannot be read waits until it can.
      return told.understood ? [{ id, amount: told.value }] : [];
    }),
    { ...draft, style: styleOf(draft.spec.cap.style) },
  );
  const values = valuesOf(fits.changes);
  const inTheWay = fits.changes.length > 0 ? inTheWayOf(wish, values) : null;
  const mark = (id: FindingId, told: Told | undefined) => {
    putBack();
    const { [id]: _, ...others } = found;
    setFound(told === undefined ? others : { ...others, [id]: told });
  };
  return (
    <details className="needs fitting">
      <summary>Fitting: how does it sit?</summary>
      <p className="help">Try on a toile, a cap in cheap cloth, or the finished cap. Tick what you see.</p>
      <ul className="findings">
        {findings.map(({ id, title, amount }) => {
          const told = found[id];
          return (
            <li key={id}>
              <label className="check">
                <input
                  type="checkbox"
                  checked={told !== undefined}
                  onChange={(event) =>
                    mark(id, event.target.checked ? (amount ? usually(amount.usual, unit) : null) : undefined)
                  }
                />
                {title}
              </label>
              {amount && told && (
                <Amount question={amount.question} told={told} onTold={(next) => mark(id, next)} />
              )}
            </li>
          );
        })}
      </ul>
      <Advice fits={fits} unit={unit} inTheWay={inTheWay} />
      {fits.changes.length > 0 && (
        <div className="fit-buttons">
          <button
            type="button"
            aria-disabled={inTheWay !== null}
            onClick={() => (tried ? putBack() : tryOn(values))}
          >
            {tried ? 'Put it back' : 'Show it on the table'}
          </button>
          <button
            type="button"
            className="main"
            aria-disabled={inTheWay !== null}
            onClick={({ currentTarget }) => {
              if (!keepFit(values, noteOf(fits, draft))) return;
              focusHeading(currentTarget);
              setFound({});
            }}
          >
            Change the pattern
          </button>
        </div>
      )}
      <FitNotes unit={unit} />
    </details>
  );
};

const usually = (mm: number, unit: Unit): Told => ({
  text: formatLength(mm, unit),
  value: mm,
  unit,
  understood: true,
});

const valuesOf = (changes: readonly FitChange[]) =>
  Object.fromEntries(changes.map(({ key, to }) => [key, to]));

const noteOf = ({ advice, changes }: Fits, { spec }: Draft) => ({
  date: today(),
  style: spec.cap.style,
  found: advice.map(({ title }) => title),
  changed: Object.fromEntries(changes.map(({ key, from, to }) => [key, [from, to] as const])),
});

interface AmountProps {
  readonly question: string;
  readonly told: Told & object;
  readonly onTold: (told: Told) => void;
}

const Amount = ({ question, told, onTold }: AmountProps) => {
  const unit = useStudio((s) => s.wish.unit);
  const { value } = told;
  const text = stillStands(told, value, unit) ? told.text : formatLength(value, unit);
  const read = parseLength(text, unit);
  return (
    <label className="fit-amount">
      {question}
      <input
        type="text"
        inputMode="decimal"
        value={text}
        aria-invalid={!read.ok || undefined}
        onChange={({ target }) => {
          const next = parseLength(target.value, unit);
          onTold({ text: target.value, value: next.ok ? next.mm : value, unit, understood: next.ok });
        }}
      />
      {!read.ok && <span className="problem">{read.message}</span>}
    </label>
  );
};

interface AdviceProps {
  readonly fits: Fits;
  readonly unit: Unit;
  /** What keeps a cap with the change from being sewn. */
  readonly inTheWay: Problem | null;
}

const Advice = ({ fits, unit, inTheWay }: AdviceProps) => (
  <div aria-live="polite">
    {fits.advice.map(({ id, title, cause, change, missing }) => (
      <div className="fit-advice" key={id}>
        <b>{title}</b>
        <p>
          <Said words={cause} />
        </p>
        {change && (
          <p>
            {change.label}: <Figures text={rowValue(change, change.from, unit)} /> →{' '}
            <Figures text={rowValue(change, change.to, unit)} />
          </p>
        )}
        {missing && (
          <p className="problem">
            <Said words={missing} />
          </p>
        )}
      </div>
    ))}
    {fits.conflicts.map(({ label, titles }) => (
      <p className="problem" key={label}>
        These pull {label.toLowerCase()} two ways: {titles.map((title) => `“${title}”`).join(' and ')}.
        Nothing is changed for them until you take one back.
      </p>
    ))}
    {inTheWay !== null && (
      <p className="problem">
        With what is wished now this cannot be sewn. <Said words={inTheWay.message} />
      </p>
    )}
  </div>
);
