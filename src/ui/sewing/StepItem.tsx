import type { KeyboardEvent } from 'react';
import type { Picture } from '../../drawing/steps/shown.ts';
import type { Term } from '../../guide/glossary.ts';
import type { SettingLine } from '../../guide/settings-words.ts';
import type { Step } from '../../guide/step.ts';
import { light, lightSeam } from '../../state/actions.ts';
import { useStudio } from '../../state/studio.ts';
import { tick, ticksNow } from '../../state/ticks.ts';
import { Said } from '../Said.tsx';
import { Marks } from './Marks.tsx';

interface Props {
  readonly step: Step;
  readonly number: number;
  /** What its tick is kept by. */
  readonly tickId: string;
  readonly isOpen: boolean;
  readonly onOpen: (id: string | null) => void;
  readonly onWalk: (event: KeyboardEvent) => void;
  /** Ticked off: the next may open. */
  readonly onDone: () => void;
  readonly body: () => Omit<BodyProps, 'step'>;
}

/** One step: its tick, its title that opens it, and all that is to be known of it. */
export const StepItem = ({ step, number, tickId, isOpen, onOpen, onWalk, onDone, body }: Props) => {
  const done = useStudio((s) => ticksNow(s).includes(tickId));
  const point = () => {
    light(step.pieces[0] ?? null);
    lightSeam(step.seams[0] ?? null);
  };
  const away = () => {
    light(null);
    lightSeam(null);
  };
  return (
    <li
      className="step-item"
      data-step={step.id}
      data-done={done || undefined}
      onPointerEnter={point}
      onPointerLeave={away}
    >
      <div className="step-head">
        <input
          type="checkbox"
          aria-label={`Done: ${step.title}`}
          checked={done}
          onChange={(event) => {
            tick(tickId, event.target.checked);
            if (event.target.checked) onDone();
          }}
        />
        <button
          type="button"
          className="step-title"
          aria-expanded={isOpen}
          onKeyDown={onWalk}
          onFocus={point}
          onBlur={away}
          onClick={() => onOpen(isOpen ? null : step.id)}
        >
          <span className="step-number">{number}</span> {step.title}
        </button>
      </div>
      {isOpen && <Body step={step} {...body()} />}
    </li>
  );
};

interface BodyProps {
  readonly step: Step;
  readonly picture: Picture | null;
  readonly settings: readonly SettingLine[];
  readonly terms: readonly Term[];
}

const Body = ({ step, picture, settings, terms }: BodyProps) => (
  <div className="step-body">
    {picture && <Marks picture={picture} name={`Drawing: ${step.title}`} />}
    <ul className="step-words">
      {step.words.map((sentence, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: sentences have no other name than their place.
        <li key={i}>
          <Said words={sentence} />
        </li>
      ))}
    </ul>
    {settings.length > 0 && (
      <dl className="settings">
        {settings.map(({ name, value }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    )}
    {step.cautions.length > 0 && (
      <div className="step-caution">
        <b>Take care</b>
        <Sentences all={step.cautions} />
      </div>
    )}
    {step.checks.length > 0 && (
      <div className="step-check">
        <b>Check</b>
        <Sentences all={step.checks} />
      </div>
    )}
    {terms.length > 0 && (
      <dl className="terms">
        {terms.map(({ word, meaning }) => (
          <div key={word}>
            <dt>{word}</dt>
            <dd>{meaning}</dd>
          </div>
        ))}
      </dl>
    )}
  </div>
);

const Sentences = ({ all }: { readonly all: Step['words'] }) =>
  all.map((sentence, i) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: sentences have no other name than their place.
    <p key={i}>
      <Said words={sentence} />
    </p>
  ));
