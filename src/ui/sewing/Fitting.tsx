import { useEffect, useState } from 'react';
import { styleOf } from '../../caps/registry.ts';
import type { Draft } from '../../design/draft.ts';
import { type FindingId, findings } from '../../guide/fitting/findings.ts';
import { type FitChange, type Fitting as Fits, fittingOf } from '../../guide/fitting/fitting-of.ts';
import { putBack } from '../../state/actions.ts';
import { useStudio } from '../../state/studio.ts';
import { keepFit, tryOn } from '../../state/try-on.ts';
import { formatLength, parseLength, type Unit } from '../../units.ts';
import { focusHeading } from '../focus.ts';
import { rowValue } from '../row-value.ts';
import { Figures, Said } from '../Said.tsx';
import { today } from '../today.ts';
import { FitNotes } from './FitNotes.tsx';

/** What the wearer says of the cap on the head, what it comes from, and what to change. */
export const Fitting = ({ draft }: { readonly draft: Draft }) => {
  const tried = useStudio((s) => s.trial !== null);
  const [found, setFound] = useState<Readonly<Partial<Record<FindingId, string>>>>({});
  const unit = useStudio((s) => s.wish.unit);
  useEffect(() => () => void putBack(), []);
  const fits = fittingOf(
    findings.flatMap(({ id }) => {
      const text = found[id];
      if (text === undefined) return [];
      if (text === '') return [{ id }];
      // What cannot be read waits until it can.
      const read = parseLength(text, unit);
      return read.ok ? [{ id, amount: read.mm }] : [];
    }),
    { ...draft, style: styleOf(draft.spec.cap.style) },
  );
  const mark = (id: FindingId, text: string | null) => {
    putBack();
    const { [id]: _, ...others } = found;
    setFound(text === null ? others : { ...others, [id]: text });
  };
  return (
    <details className="needs fitting">
      <summary>Fitting: how does it sit?</summary>
      <p className="help">Try on a toile, a cap in cheap cloth, or the finished cap. Tick what you see.</p>
      <ul className="findings">
        {findings.map(({ id, title, amount }) => (
          <li key={id}>
            <label className="check">
              <input
                type="checkbox"
                checked={found[id] !== undefined}
                onChange={(event) =>
                  mark(id, event.target.checked ? (amount ? formatLength(amount.usual, unit) : '') : null)
                }
              />
              {title}
            </label>
            {amount && found[id] !== undefined && (
              <Amount question={amount.question} text={found[id]} onText={(text) => mark(id, text)} />
            )}
          </li>
        ))}
      </ul>
      <Advice fits={fits} unit={unit} />
      {fits.changes.length > 0 && (
        <div className="fit-buttons">
          {tried ? (
            <button type="button" onClick={putBack}>
              Put it back
            </button>
          ) : (
            <button type="button" onClick={() => tryOn(valuesOf(fits.changes))}>
              Show it on the table
            </button>
          )}
          <button
            type="button"
            className="main"
            onClick={({ currentTarget }) => {
              if (!keepFit(valuesOf(fits.changes), noteOf(fits, draft))) return;
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
  readonly text: string;
  readonly onText: (text: string) => void;
}

const Amount = ({ question, text, onText }: AmountProps) => {
  const unit = useStudio((s) => s.wish.unit);
  const read = parseLength(text, unit);
  return (
    <label className="fit-amount">
      {question}
      <input
        type="text"
        inputMode="decimal"
        value={text}
        aria-invalid={!read.ok || undefined}
        onChange={(event) => onText(event.target.value)}
      />
      {!read.ok && <span className="problem">{read.message}</span>}
    </label>
  );
};

const Advice = ({ fits, unit }: { readonly fits: Fits; readonly unit: Unit }) => (
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
  </div>
);
