import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { settingLines } from '../../guide/settings-words.ts';
import { type Phase, phases, type Step } from '../../guide/step.ts';
import { useStudio } from '../../state/studio.ts';
import { ticksNow } from '../../state/ticks.ts';
import { withCommandKey } from '../with-command-key.ts';
import type { GuideNow } from './guide-now.ts';
import { StepItem } from './StepItem.tsx';
import { tickId } from './tick-id.ts';

const phaseNames: Readonly<Record<Phase, string>> = {
  prepare: 'Prepare',
  interline: 'Give body',
  visor: 'Visor',
  crown: 'Crown',
  band: 'Band and small parts',
  lining: 'Inside',
  join: 'Join',
  close: 'Close',
  finish: 'Finish',
};

const nameOf = (phase: Phase, steps: readonly Step[]): string =>
  phase === 'visor' && steps.some(({ id }) => id === 'brimEdge') ? 'Brim' : phaseNames[phase];

/** The steps in order, one of them open: the first that is not done, until another is asked for. */
export const StepList = ({ now, style }: { readonly now: GuideNow; readonly style: string }) => {
  const { steps } = now.guide;
  const unit = useStudio((s) => s.wish.unit);
  const [asked, setAsked] = useState<string | null | undefined>(undefined);
  const [firstUndone] = useState(() => {
    const ticks = ticksNow(useStudio.getState());
    return steps.find(({ id }) => !ticks.includes(tickId(style, id)))?.id ?? null;
  });
  const open = asked === undefined ? firstUndone : asked;
  const list = useRef<HTMLDivElement>(null);
  // What opens must be in sight, also where the long step above it has just folded up.
  useEffect(() => {
    if (asked)
      list.current?.querySelector(`[data-step="${asked}"] .step-head`)?.scrollIntoView({ block: 'nearest' });
  }, [asked]);

  const walk = (event: KeyboardEvent) => {
    const way = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    const titles = [...(list.current?.querySelectorAll<HTMLElement>('.step-title') ?? [])];
    const at = titles.indexOf(document.activeElement as HTMLElement);
    if (way === undefined || at < 0 || withCommandKey(event)) return;
    event.preventDefault();
    titles[Math.min(Math.max(at + way, 0), titles.length - 1)]?.focus();
  };

  return (
    <div className="step-list" ref={list}>
      {phases.map((phase) => {
        const within = steps.filter((step) => step.phase === phase);
        if (within.length === 0) return null;
        return (
          <section key={phase}>
            <h3>{nameOf(phase, within)}</h3>
            <ol>
              {within.map((step) => {
                const i = steps.indexOf(step);
                return (
                  <StepItem
                    key={step.id}
                    step={step}
                    number={i + 1}
                    tickId={tickId(style, step.id)}
                    isOpen={open === step.id}
                    onOpen={setAsked}
                    onWalk={walk}
                    onDone={() => {
                      if (open === step.id) setAsked(steps[i + 1]?.id ?? null);
                    }}
                    body={() => ({
                      picture: now.pictureOf(step),
                      settings: settingLines(now.work, step, unit),
                      terms: now.terms[i]!,
                    })}
                  />
                );
              })}
            </ol>
          </section>
        );
      })}
    </div>
  );
};
