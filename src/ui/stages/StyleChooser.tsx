import { useEffect, useId, useMemo, useState } from 'react';
import { fetchStyles, isStyleId, styleOf } from '../../caps/registry.ts';
import type { Head, Style } from '../../caps/style.ts';
import { putStyle, putValues } from '../../state/cap-actions.ts';
import { judged } from '../../state/derived.ts';
import { useStudio } from '../../state/studio.ts';
import { FormSketch } from '../FormSketch.tsx';
import { styleSketch } from './style-sketch.ts';

/** Every style as a small drawing of its own form on this head, with its names; and points to start from. */
export const StyleChooser = () => {
  const [styles, setStyles] = useState<readonly Style[]>([]);
  useEffect(() => {
    void fetchStyles().then(setStyles);
  }, []);
  const name = useId();
  const chosen = useStudio((s) => s.wish.cap.style);
  const head = useStudio((s) => judged(s.good).given?.head ?? null);
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

const Sketch = ({ style, head }: { readonly style: Style; readonly head: Head }) => {
  const cap = useStudio((s) => s.good.cap);
  return <FormSketch form={useMemo(() => styleSketch(style, cap, head), [style, cap, head])} />;
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
