import { type KeyboardEvent, useEffect, useId, useLayoutEffect, useRef, useState } from 'react';
import { choose, light, putWorn } from '../../state/actions.ts';
import { useStudio } from '../../state/studio.ts';
import { type ViewName, views } from '../../worn/gaze.ts';
import { Clothing } from './Clothing.tsx';
import { Drawings } from './Drawings.tsx';
import { saveDrawing, savePicture } from './save.ts';
import type { Swatch } from './scene.ts';
import { openStand, type Stand, type Told } from './stand.ts';
import './preview.css';

const viewNames: Readonly<Record<ViewName, string>> = {
  front: 'Front',
  side: 'Side',
  back: 'Back',
  top: 'Top',
};

/** Whether the device asks for as little motion as can be. */
const wantsStill = (): boolean => matchMedia('(prefers-reduced-motion: reduce)').matches;

type Mode = 'model' | 'drawing';

/**
 * The cap on a head, beside the table or in its place: turned, tilted and zoomed by hand or keyboard. Where it cannot be
 * painted, or where motion is not wanted, a line drawing from four sides.
 */
export const Preview = () => {
  const worn = useStudio((s) => s.worn);
  const [mode, setMode] = useState<Mode>(() => (wantsStill() ? 'drawing' : 'model'));
  const [why, setWhy] = useState<string | null>(null);
  const [swatch, setSwatch] = useState<Swatch | null>(null);
  const stand = useRef<Stand | null>(null);
  const name = useId();
  const spec = useStudio((s) => s.good);
  const save = (): void => {
    if (stand.current) savePicture(stand.current.picture(), spec.cap.name);
  };
  return (
    <section className="worn" aria-labelledby={name} data-place={worn.place}>
      <div className="worn-head">
        <h2 id={name}>Worn</h2>
        <div className="worn-places">
          <button
            type="button"
            aria-pressed={worn.place === 'instead'}
            onClick={() => putWorn({ place: worn.place === 'instead' ? 'beside' : 'instead' })}
          >
            {worn.place === 'instead' ? 'Beside the table' : 'Larger'}
          </button>
          <button type="button" onClick={() => putWorn({ place: 'hidden' })}>
            Hide
          </button>
        </div>
      </div>
      {mode === 'model' ? (
        <Model
          swatch={swatch}
          stand={stand}
          onNone={(reason) => {
            setWhy(reason);
            setMode('drawing');
          }}
        />
      ) : (
        <Drawings tilted={worn.tilted} />
      )}
      <div className="worn-foot">
        {mode === 'model' ? (
          <fieldset className="worn-views">
            <legend className="unseen">View</legend>
            {(Object.keys(views) as ViewName[]).map((view) => (
              <button key={view} type="button" onClick={() => stand.current?.look(views[view])}>
                {viewNames[view]}
              </button>
            ))}
          </fieldset>
        ) : (
          <p className="help">
            {why ?? 'Drawn, because this device asks for little motion.'}{' '}
            {why !== NO_MODEL && (
              <button
                type="button"
                onClick={() => {
                  setWhy(null);
                  setMode('model');
                }}
              >
                Turn it in space
              </button>
            )}
          </p>
        )}
        <details className="worn-more">
          <summary>Cloth and picture</summary>
          <label className="switch">
            <input
              type="checkbox"
              checked={worn.tilted}
              onChange={(event) => putWorn({ tilted: event.target.checked })}
            />
            Worn to one side
          </label>
          {mode === 'model' && <Clothing swatch={swatch} onSwatch={setSwatch} />}
          <div className="worn-save">
            {mode === 'model' && (
              <button type="button" onClick={save}>
                Save picture (PNG)
              </button>
            )}
            <button type="button" onClick={() => saveDrawing(spec, worn.tilted)}>
              Save drawing (SVG)
            </button>
          </div>
        </details>
      </div>
    </section>
  );
};

const NO_MODEL = 'Drawn, because this browser has no WebGL to show it in space.';
const LOST = 'Drawn, because the browser has taken its canvas back.';

interface ModelProps {
  readonly swatch: Swatch | null;
  readonly stand: { current: Stand | null };
  readonly onNone: (reason: string) => void;
}

/** How long a canvas that was taken away is waited for, ms. */
const PATIENCE = 1500;

const Model = ({ swatch, stand, onNone }: ModelProps) => {
  const root = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const spec = useStudio((s) => s.good);
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

  // biome-ignore lint/correctness/useExhaustiveDependencies: the canvas is a new one each time.
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
    };
    const now = openStand(root.current!, canvas.current!, () => told);
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
    stand.current?.show({ spec, wish, swatch, lit, chosen, litSeam });
  }, [opened, spec, wish, swatch, lit, chosen, litSeam]);

  const onKeyDown = (event: KeyboardEvent): void => {
    const now = stand.current;
    if (!now || event.ctrlKey || event.metaKey || event.altKey) return;
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
      <canvas key={opened} ref={canvas} />
      <p id={help} className="unseen">
        Arrows turn the head, + and − zoom, 0 brings it back.
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
