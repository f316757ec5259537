import { type ChangeEvent, useId, useState } from 'react';
import { putWorn } from '../../state/actions.ts';
import { useStudio } from '../../state/studio.ts';
import { type Weave, weaves } from '../../state/worn-wish.ts';
import { Going } from '../Going.tsx';
import { useInShort } from '../use-in-short.ts';
import type { Swatch } from './scene.ts';

const weaveNames: Readonly<Record<Weave, string>> = {
  plain: 'Plain',
  ribbed: 'Ribbed along the grain',
  checked: 'Checked',
};

/** A photo is kept no finer than this, pixels. */
const FINEST = 1024;
const USUAL_CM = 10;

type Shown = 'outer' | 'lining';

interface Props {
  readonly swatches: Readonly<Record<Shown, Swatch | null>>;
  readonly onSwatch: Readonly<Record<Shown, (swatch: Swatch | null) => void>>;
}

/** What the cloths look like: a colour and a weave, or a photo of the cloth itself, laid along the grain of each piece. */
export const Clothing = ({ swatches, onSwatch }: Props) => {
  const { colour, weave, lining } = useStudio((s) => s.worn);
  const lined = useInShort()?.lined ?? false;
  const cloth = useId();
  return (
    <div className="clothing">
      <label>
        Colour
        <input type="color" value={colour} onChange={(event) => putWorn({ colour: event.target.value })} />
      </label>
      <p className="field">
        <label htmlFor={cloth}>Cloth shown</label>
        <select
          id={cloth}
          value={weave}
          onChange={(event) => {
            const chosen = weaves.find((one) => one === event.target.value);
            if (chosen) putWorn({ weave: chosen });
          }}
        >
          {weaves.map((one) => (
            <option key={one} value={one}>
              {weaveNames[one]}
            </option>
          ))}
        </select>
      </p>
      <Photo
        of="cloth"
        help="Its upright lies along the grain. It stays on this device and goes when the page is closed."
        swatch={swatches.outer}
        onSwatch={onSwatch.outer}
      />
      {lined && (
        <>
          <label>
            Lining colour
            <input
              type="color"
              value={lining}
              onChange={(event) => putWorn({ lining: event.target.value })}
            />
          </label>
          <Photo
            of="lining"
            help="It is seen from within."
            swatch={swatches.lining}
            onSwatch={onSwatch.lining}
          />
        </>
      )}
    </div>
  );
};

interface PhotoProps {
  readonly of: 'cloth' | 'lining';
  readonly help: string;
  readonly swatch: Swatch | null;
  readonly onSwatch: (swatch: Swatch | null) => void;
}

/** Words of the fields for either photo. */
const photoWords = {
  cloth: { shows: 'The photo shows', without: 'Without the photo' },
  lining: { shows: 'The lining’s photo shows', without: 'Without the lining’s photo' },
} as const;

/** A photo of a cloth, how broad it is in truth, and how to be rid of it. */
const Photo = ({ of, help, swatch, onSwatch }: PhotoProps) => {
  const [refused, setRefused] = useState(false);
  // What is typed stays until the field is left.
  const [typed, setTyped] = useState<string | null>(null);
  const take = async ({ target }: ChangeEvent<HTMLInputElement>): Promise<void> => {
    const file = target.files?.[0];
    if (!file) return;
    const image = await scaledDown(file);
    // The same photo can be taken again.
    target.value = '';
    setRefused(image === null);
    if (image) onSwatch({ image, mm: swatch?.mm ?? USUAL_CM * 10 });
  };
  return (
    <>
      <label>
        Photo of the {of}
        <input type="file" accept="image/*" onChange={(event) => void take(event)} />
      </label>
      <p className="help">{refused ? 'This file could not be read as a picture.' : help}</p>
      {swatch && (
        <>
          <label>
            {photoWords[of].shows}
            <input
              type="number"
              min={1}
              max={200}
              value={typed ?? swatch.mm / 10}
              onChange={({ target }) => {
                setTyped(target.value);
                const cm = target.valueAsNumber;
                if (cm >= 1 && cm <= 200) onSwatch({ ...swatch, mm: cm * 10 });
              }}
              onBlur={() => setTyped(null)}
            />
            cm across
          </label>
          <Going onPress={() => onSwatch(null)}>{photoWords[of].without}</Going>
        </>
      )}
    </>
  );
};

/** A picture as a square of pixels that repeats: null where it cannot be read. */
const scaledDown = async (file: File): Promise<HTMLCanvasElement | null> => {
  try {
    const bitmap = await createImageBitmap(file);
    const side = Math.min(bitmap.width, bitmap.height);
    const canvas = document.createElement('canvas');
    canvas.width = canvas.height = Math.min(FINEST, side);
    canvas
      .getContext('2d')!
      .drawImage(
        bitmap,
        (bitmap.width - side) / 2,
        (bitmap.height - side) / 2,
        side,
        side,
        0,
        0,
        canvas.width,
        canvas.height,
      );
    return canvas;
  } catch {
    return null;
  }
};
