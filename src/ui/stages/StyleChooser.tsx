import { useEffect, useId, useMemo, useState } from 'react';
import { fetchStyles, isStyleId, type StyleId, styleIds, styleOf } from '../../caps/registry.ts';
import type { Style } from '../../caps/style.ts';
import { putStyle, putValues } from '../../state/cap-actions.ts';
import { useStudio } from '../../state/studio.ts';
import { FormSketch } from '../sketches/FormSketch.tsx';
import { useSketchesOfTable } from '../sketches/use-sketches.ts';

/** Every style as a small drawing of its own form on this head, with its names; and points to start from. */
export const StyleChooser = () => {
  const [styles, setStyles] = useState<readonly Style[] | null>(null);
  useEffect(() => {
    void fetchStyles().then(setStyles);
  }, []);
  const chosen = useStudio((s) => s.wish.cap.style);
  return (
    <>
      {styles && <Choices styles={styles} chosen={chosen} />}
      <Starts style={styleOf(chosen)} />
    </>
  );
};

interface ChoicesProps {
  readonly styles: readonly Style[];
  readonly chosen: StyleId;
}

const Choices = ({ styles, chosen }: ChoicesProps) => {
  const name = useId();
  const ids = useMemo(() => styles.map(({ id }) => id).filter(isStyleId), [styles]);
  const sketches = useSketchesOfTable(ids);
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
      {styles.length < styleIds.length && (
        <p className="remark">Some styles could not be fetched. Please reload the page.</p>
      )}
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
