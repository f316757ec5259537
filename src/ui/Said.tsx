import { useStudio } from '../state/studio.ts';
import { say, type Words } from '../words.ts';

/** Fractions of an inch and of a hat size; never a date. */
const FRACTION = /(?<![\d/])(\d{1,2}\/(?:2|4|8|16|32))(?![\d/])/;

/** A number with its fraction and its unit, which no line may part. */
const QUANTITY = /(\d[\d.,]*(?: \d{1,2}\/\d{1,2})?(?:\/\d{1,2})? ?(?:cm|mm|in|yd|%|°)?)(?![\w/])/;

export const hasFraction = (text: string): boolean => FRACTION.test(text);

/** Text with its fractions set as fractions. */
export const Figures = ({ text }: { readonly text: string }) => (
  <Parts text={text} by={QUANTITY} className="quantity" />
);

interface PartsProps {
  readonly text: string;
  /** With one group: what it catches is set apart. */
  readonly by: RegExp;
  readonly className: string;
}

const Parts = ({ text, by, className }: PartsProps) =>
  text.split(by).map((part, i) => {
    if (i % 2 === 0) return part;
    const inner = by === QUANTITY ? <Parts text={part} by={FRACTION} className="fraction" /> : part;
    return (
      // biome-ignore lint/suspicious/noArrayIndexKey: the parts of a text have no other name than their place.
      <span className={className} key={i}>
        {inner}
      </span>
    );
  });

/** A sentence with quantities in it, said in the reader's unit. */
export const Said = ({ words }: { readonly words: Words }) => (
  <Figures
    text={say(
      words,
      useStudio((s) => s.wish.unit),
    )}
  />
);
