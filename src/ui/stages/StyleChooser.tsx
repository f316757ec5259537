import { useEffect, useId, useState } from 'react';
import { fetchStyles, isStyleId, styleIds, styleOf } from '../../caps/registry.ts';
import type { Style } from '../../caps/style.ts';
import { putStyle, putValues } from '../../state/cap-actions.ts';
import { useStudio } from '../../state/studio.ts';
import { FormSketch } from '../sketches/FormSketch.tsx';
import { useSketchesOfTable } from '../sketches/use-sketches.ts';

/** Every style as a small drawing of its own form on this head, with its names; and points to start from. */
export const StyleChooser = () => {
  const [styles, setStyles] = useState<readonly Style[]>([]);
  useEffect(() => {
    void fetchStyles().then(setStyles);
  }, []);
  const name = useId();
  const chosen = useStudio((s) => s.wish.cap.style);
  const sketches = useSketchesOfTable(styleIds);
  return (
    <>
      <fieldset className="styles">
        <legend className="unseen">Style</legend>
        {styles.map((style, i) => (
          <label key={style.id} className="style">
            <input
              type="radio"
              name={name}
              checked={style.id === chosen}
              onChange={() => {
                if (isStyleId(style.id)) void putStyle(style.id);
              }}
            />
            <FormSketch picture={sketches[i]} />
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
