import { useId, useRef, useState } from 'react';
import { putWorn } from '../../state/actions.ts';
import { shownIn } from '../../state/shown.ts';
import { useStudio } from '../../state/studio.ts';
import { type ViewName, views } from '../../worn/gaze.ts';
import { Clothing } from './Clothing.tsx';
import { Drawings } from './Drawings.tsx';
import { Model, NO_MODEL } from './Model.tsx';
import { saveDrawing, savePicture } from './save.ts';
import type { Swatch } from './scene.ts';
import type { Stand } from './stand.ts';
import { viewNames } from './view-names.ts';
import './preview.css';

/** Whether the device asks for as little motion as can be. */
const wantsStill = (): boolean => matchMedia('(prefers-reduced-motion: reduce)').matches;

type Mode = 'model' | 'drawing';

/**
 * The cap on a head, beside the table or in its place: turned, tilted and zoomed by hand or keyboard. Where it cannot be
 * painted, or where motion is not wanted, a line drawing from four sides and from below.
 */
export const Preview = () => {
  const worn = useStudio((s) => s.worn);
  const [mode, setMode] = useState<Mode>(() => (wantsStill() ? 'drawing' : 'model'));
  const [why, setWhy] = useState<string | null>(null);
  const [swatch, setSwatch] = useState<Swatch | null>(null);
  const [liningSwatch, setLiningSwatch] = useState<Swatch | null>(null);
  const stand = useRef<Stand | null>(null);
  const name = useId();
  const shown = () => shownIn(useStudio.getState());
  const save = (): void => {
    if (stand.current) savePicture(stand.current.picture(), shown().cap.name);
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
          liningSwatch={liningSwatch}
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
          {mode === 'model' && (
            <Clothing
              swatches={{ outer: swatch, lining: liningSwatch }}
              onSwatch={{ outer: setSwatch, lining: setLiningSwatch }}
            />
          )}
          <div className="worn-save">
            {mode === 'model' && (
              <button type="button" onClick={save}>
                Save picture (PNG)
              </button>
            )}
            <button type="button" onClick={() => saveDrawing(shown(), worn.tilted)}>
              Save drawing (SVG)
            </button>
          </div>
        </details>
      </div>
    </section>
  );
};
