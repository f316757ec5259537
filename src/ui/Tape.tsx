import { type KeyboardEvent, useRef } from 'react';
import { type Stage, stageNames, stages } from '../state/stage.ts';
import { useStudio } from '../state/studio.ts';
import { fetchForm, fetchForms, walkTo } from './stages/forms.ts';
import { withCommandKey } from './with-command-key.ts';

/** The stages of the work, marked along a measuring tape. Arrow keys walk along it. */
export const Tape = () => {
  const current = useStudio((s) => s.stage);
  const tape = useRef<HTMLDivElement>(null);
  const onKeyDown = (event: KeyboardEvent) => {
    const to = withCommandKey(event) ? null : walked(event.key, stages.indexOf(current));
    if (to === null) return;
    event.preventDefault();
    void walkTo(to).then(() => tape.current?.querySelector<HTMLElement>(`#stage-${to}`)?.focus());
  };
  return (
    <nav className="tape" aria-label="Stages of the work">
      <Ticks />
      <div ref={tape} role="tablist" aria-label="Stages" onKeyDown={onKeyDown}>
        {stages.map((stage, i) => (
          <button
            key={stage}
            type="button"
            role="tab"
            id={`stage-${stage}`}
            aria-controls="ticket"
            aria-selected={stage === current}
            tabIndex={stage === current ? 0 : -1}
            onClick={() => void walkTo(stage)}
            onPointerEnter={() => void fetchForm(stage)}
            onFocus={fetchForms}
          >
            <span className="mark" aria-hidden="true">
              {i}
            </span>
            {stageNames[stage]}
          </button>
        ))}
      </div>
    </nav>
  );
};

/** Ten divisions to a stage, as on a tape: long at the stage, middling at the half. */
const TICKS = stages.flatMap((_, i) =>
  Array.from({ length: 10 }, (_, j) => ({ at: i * 10 + j, length: j === 0 ? 14 : j === 5 ? 8 : 5 })),
);

const Ticks = () => (
  <svg aria-hidden="true">
    {TICKS.slice(1).map(({ at, length }) => (
      <line key={at} x1={`${at * 2}%`} x2={`${at * 2}%`} y1="0" y2={length} />
    ))}
  </svg>
);

const walked = (key: string, from: number): Stage | null => {
  const last = stages.length - 1;
  const to = { ArrowRight: from + 1, ArrowLeft: from - 1, Home: 0, End: last }[key];
  return to === undefined ? null : (stages[(to + stages.length) % stages.length] ?? null);
};
