import { type KeyboardEvent, useEffect, useId, useLayoutEffect, useRef, useState } from 'react';
import { choose, light } from '../../state/actions.ts';
import { shownIn } from '../../state/shown.ts';
import { useStudio } from '../../state/studio.ts';
import { withCommandKey } from '../with-command-key.ts';
import type { Swatch } from './scene.ts';
import { openStand, type Stand, type Told } from './stand.ts';

/** Why there is no model to turn. */
export const NO_MODEL = 'Drawn, because this browser has no WebGL to show it in space.';
const LOST = 'Drawn, because the browser has taken its canvas back.';
const FAILED = 'Drawn, because what shows it in space could not be fetched.';

interface ModelProps {
  readonly swatch: Swatch | null;
  readonly liningSwatch: Swatch | null;
  readonly stand: { current: Stand | null };
  readonly onNone: (reason: string) => void;
}

/** How long a canvas that was taken away is waited for, ms. */
const PATIENCE = 1500;

/** The cap on its head in space: turned by hand and by keys. */
export const Model = ({ swatch, liningSwatch, stand, onNone }: ModelProps) => {
  const root = useRef<HTMLDivElement>(null);
  const spec = useStudio(shownIn);
  const wish = useStudio((s) => s.worn);
  const lit = useStudio((s) => s.lit);
  const chosen = useStudio((s) => s.chosen);
  const litSeam = useStudio((s) => s.litSeam);
  const help = useId();
  // A canvas that was given back is opened anew.
  const [opened, setOpened] = useState(0);
  const none = useRef(onNone);
  useLayoutEffect(() => {
    none.current = onNone;
  }, [onNone]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: each time another stand is opened.
  useEffect(() => {
    let waiting: ReturnType<typeof setTimeout> | undefined;
    const told: Told = {
      choose,
      light,
      lost: (isLost) => {
        clearTimeout(waiting);
        if (isLost) waiting = setTimeout(() => none.current(LOST), PATIENCE);
        else setOpened((n) => n + 1);
      },
      failed: () => none.current(FAILED),
    };
    const now = openStand(root.current!, told);
    stand.current = now;
    if (now === null) none.current(NO_MODEL);
    return () => {
      clearTimeout(waiting);
      now?.close();
      stand.current = null;
    };
  }, [opened]);

  // biome-ignore lint/correctness/useExhaustiveDependencies: a stand that is opened anew is told all again.
  useEffect(() => {
    stand.current?.show({ spec, wish, swatch, liningSwatch, lit, chosen, litSeam });
  }, [opened, spec, wish, swatch, liningSwatch, lit, chosen, litSeam]);

  const onKeyDown = (event: KeyboardEvent): void => {
    const now = stand.current;
    if (!now || withCommandKey(event)) return;
    const stroke = strokes[event.key];
    if (!stroke) return;
    event.preventDefault();
    stroke(now);
  };

  return (
    <div
      className="worn-model"
      ref={root}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the keys that turn it need a place to be pressed in.
      tabIndex={0}
      role="application"
      aria-label="The cap on a head"
      aria-describedby={help}
      onKeyDown={onKeyDown}
    >
      <p id={help} className="unseen">
        Arrows turn the head, + and − zoom, 0 brings it back. From far below you look into the cap.
      </p>
    </div>
  );
};

/** Radians at a press of an arrow, and the zoom at a press of + or −. */
const [STEP, CLOSER] = [Math.PI / 12, 1.25];

const strokes: Readonly<Record<string, (stand: Stand) => void>> = {
  ArrowLeft: (stand) => stand.turn(-STEP, 0),
  ArrowRight: (stand) => stand.turn(STEP, 0),
  ArrowUp: (stand) => stand.turn(0, -STEP),
  ArrowDown: (stand) => stand.turn(0, STEP),
  '+': (stand) => stand.zoom(CLOSER),
  '=': (stand) => stand.zoom(CLOSER),
  '-': (stand) => stand.zoom(1 / CLOSER),
  '0': (stand) => stand.reset(),
};
