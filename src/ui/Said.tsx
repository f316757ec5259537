import { useStudio } from '../state/studio.ts';
import { say, type Words } from '../words.ts';

/** Fractions of an inch and of a hat size; never a date. */
const FRACTION = /(?<![\d/])(\d{1,2}\/(?:2|4|8|16|32))(?![\d/])/;

export const hasFraction = (text: string): boolean => FRACTION.test(text);

/** Text with its fractions set as fractions. */
export const Figures = ({ text }: { readonly text: string }) =>
  text.split(FRACTION).map((part, i) =>
    i % 2 === 0 ? (
      part
    ) : (
      // biome-ignore lint/suspicious/noArrayIndexKey: the parts of a text have no other name than their place.
      <span className="fraction" key={i}>
        {part}
      </span>
    ),
  );

/** A sentence with quantities in it, said in the reader's unit. */
export const Said = ({ words }: { readonly words: Words }) => (
  <Figures
    text={say(
      words,
      useStudio((s) => s.wish.unit),
    )}
  />
);
