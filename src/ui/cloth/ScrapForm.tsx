import { useId } from 'react';
import { MOST_SCRAPS, type Scrap } from '../../cloth/cloth.ts';
import { readCorners, rectangle, writeCorners } from '../../cloth/scrap-corners.ts';
import type { Point } from '../../geometry/point.ts';
import type { Cloth } from '../../pattern/piece.ts';
import { putScraps } from '../../state/cloth-actions.ts';
import { useStudio } from '../../state/studio.ts';
import { inches, type Unit } from '../../units.ts';
import { Going } from '../Going.tsx';
import { forgetCorners, type TypedCorners } from './typed-corners.ts';

interface Typing {
  readonly typed: TypedCorners;
  readonly onTyped: (typed: TypedCorners) => void;
}

interface Props extends Typing {
  readonly cloth: Cloth;
}

/** What is at hand in pieces: their corners, and what is spoilt in them. */
export const ScrapForm = ({ cloth, ...typing }: Props) => {
  const scraps = useStudio((s) => s.wish.cloths[cloth].scraps);
  const unit = useStudio((s) => s.wish.unit);
  const full = scraps.length >= MOST_SCRAPS;
  return (
    <details>
      <summary>Scraps at hand</summary>
      <p className="help">
        Left-over pieces of any shape. Lay each with its grain from left to right and type its corners, along
        and across, in order round it. Of a rectangle its size will do, such as 60 x 40.
      </p>
      {scraps.map((scrap, i) => (
        <ScrapFields
          // biome-ignore lint/suspicious/noArrayIndexKey: a scrap is known by its place in the list alone.
          key={i}
          name={`Scrap ${i + 1}`}
          scrap={scrap}
          unit={unit}
          {...typing}
          onChange={(changed) => putScraps(cloth, scraps.with(i, changed))}
          onRemove={() => putScraps(cloth, scraps.toSpliced(i, 1))}
        />
      ))}
      <button
        type="button"
        aria-disabled={full}
        onClick={() => full || putScraps(cloth, [...scraps, plainScrap(unit)])}
      >
        Add a scrap
      </button>
      {full && <p className="help">No more than {MOST_SCRAPS} scraps of a cloth.</p>}
    </details>
  );
};

const plainScrap = (unit: Unit): Scrap => ({
  outline: unit === 'cm' ? rectangle(0, 0, 600, 400) : rectangle(0, 0, inches(24), inches(16)),
  flaws: [],
});

interface FieldsProps extends Typing {
  readonly name: string;
  readonly scrap: Scrap;
  readonly unit: Unit;
  readonly onChange: (scrap: Scrap) => void;
  readonly onRemove: () => void;
}

const ScrapFields = ({ name, scrap, onChange, onRemove, ...common }: FieldsProps) => {
  const { outline, flaws } = scrap;
  return (
    <fieldset className="scrap">
      <legend>{name}</legend>
      <Corners
        {...common}
        label={`${name}, corners`}
        corners={outline}
        onRead={(ring) => onChange({ ...scrap, outline: ring })}
      />
      {flaws.map((flaw, i) => (
        <Corners
          // biome-ignore lint/suspicious/noArrayIndexKey: a flaw is known by its place in the list alone.
          key={i}
          {...common}
          label={`${name}, flaw ${i + 1}`}
          corners={flaw}
          onRead={(ring) => onChange({ ...scrap, flaws: flaws.with(i, ring) })}
          onRemove={() => onChange({ ...scrap, flaws: flaws.toSpliced(i, 1) })}
        />
      ))}
      <div className="actions">
        <button type="button" onClick={() => onChange({ ...scrap, flaws: [...flaws, flawIn(outline)] })}>
          Add a flaw
        </button>
        <Going onPress={onRemove}>Remove</Going>
      </div>
    </fieldset>
  );
};

/** A spoilt place as large as a hand's palm, near the first corner. */
const flawIn = ([corner]: readonly Point[]): readonly Point[] =>
  rectangle((corner?.x ?? 0) + 100, (corner?.y ?? 0) + 100, 80, 80);

interface CornersProps extends Typing {
  readonly label: string;
  readonly corners: readonly Point[];
  readonly unit: Unit;
  readonly onRead: (corners: readonly Point[]) => void;
  readonly onRemove?: () => void;
}

/** Corners as text. What cannot be read stays as it was typed, with a word why. */
const Corners = ({ label, corners, unit, typed, onTyped, onRead, onRemove }: CornersProps) => {
  const id = useId();
  const text = typed.get(corners);
  const read = text === undefined ? null : readCorners(text, unit);
  return (
    <div className="control wide">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        className="figures"
        value={text ?? writeCorners(corners, unit)}
        aria-invalid={(read !== null && !read.ok) || undefined}
        onChange={({ target }) => {
          const now = readCorners(target.value, unit);
          onTyped(forgetCorners(typed, corners).set(now.ok ? now.corners : corners, target.value));
          if (now.ok) onRead(now.corners);
        }}
        onBlur={() => {
          if (read?.ok) onTyped(forgetCorners(typed, corners));
        }}
      />
      {onRemove && <Going onPress={onRemove}>Remove this flaw</Going>}
      <div aria-live="polite">{read !== null && !read.ok && <p className="problem">{read.message}</p>}</div>
    </div>
  );
};
