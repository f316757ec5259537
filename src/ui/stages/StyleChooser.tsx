import { useEffect, useId, useMemo, useState } from 'react';
import { fetchStyles, isStyleId, styleOf } from '../../caps/registry.ts';
import type { Head, Style } from '../../caps/style.ts';
import { formPicture } from '../../drawing/form-picture.ts';
import { boxCentre, boxHeight, boxWidth } from '../../geometry/box.ts';
import { putStyle, putValues } from '../../state/actions.ts';
import { derived } from '../../state/derived.ts';
import { useStudio } from '../../state/studio.ts';
import { styleSketch } from './style-sketch.ts';

/** Every style as a small drawing of its own form on this head, with its names; and points to start from. */
export const StyleChooser = () => {
  const [styles, setStyles] = useState<readonly Style[]>([]);
  useEffect(() => {
    void fetchStyles().then(setStyles);
  }, []);
  const name = useId();
  const chosen = useStudio((s) => s.wish.cap.style);
  const head = useStudio((s) => derived(s.good).draft?.head ?? null);
  if (head === null) return null;
  return (
    <>
      <fieldset className="styles">
        <legend className="unseen">Style</legend>
        {styles.map((style) => (
          <label key={style.id} className="style">
            <input
              type="radio"
              name={name}
              checked={style.id === chosen}
              onChange={() => {
                if (isStyleId(style.id)) void putStyle(style.id);
              }}
            />
            <Sketch style={style} head={head} />
            <b>{style.name}</b>
            {style.alsoCalled.length > 0 && <span className="help">{style.alsoCalled.join(', ')}</span>}
            <span className="help">{style.tells}</span>
          </label>
        ))}
      </fieldset>
      <Starts style={styleOf(chosen)} />
    </>
  );
};

/** Room for a cap of usual size, mm: small caps look small beside large ones. */
const ROOM = { width: 280, height: 170 };

const Sketch = ({ style, head }: { readonly style: Style; readonly head: Head }) => {
  const cap = useStudio((s) => s.good.cap);
  const { box, patches } = useMemo(() => formPicture(styleSketch(style, cap, head)), [style, cap, head]);
  const { x, y } = boxCentre(box);
  const [width, height] = [Math.max(boxWidth(box), ROOM.width), Math.max(boxHeight(box), ROOM.height)];
  return (
    <svg viewBox={`${x - width / 2} ${-y - height / 2} ${width} ${height}`} aria-hidden="true">
      {patches.map((d) => (
        <path key={d} d={d} />
      ))}
    </svg>
  );
};

/** Mixes to start from, taken at once and undone like anything else. */
const Starts = ({ style }: { readonly style: Style }) =>
  style.starts.length === 0 ? null : (
    <fieldset className="starts">
      <legend>Start from</legend>
      {style.starts.map(({ name, values }) => (
        <button key={name} type="button" onClick={() => putValues(values)}>
          {name}
        </button>
      ))}
    </fieldset>
  );
