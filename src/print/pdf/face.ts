import { type Kerning, kerningOf } from './kerning.ts';
import type { Typeface } from './pen.ts';
import { type Pictures, pictureKey } from './pictures.ts';

/** What must be known of a font: which glyph stands for a letter (0 for none), and how wide it is, 1/1000 em. */
export interface Metadata {
  characterToGlyph(code: number): number;
  widthOfGlyph(glyph: number): number;
}

export interface Face {
  readonly metadata: Metadata;
  readonly kerning: Kerning;
}

export const faceOf = (metadata: Metadata, file: Uint8Array): Face => ({
  metadata,
  kerning: kerningOf(file),
});

/** Whether every letter is in the typeface and stands for itself, written from left to right. */
export const isCovered = ({ metadata }: Face, text: string): boolean =>
  !JOINED.test(text) &&
  [...text].every((c) => c.length === 1 && metadata.characterToGlyph(c.charCodeAt(0)) > 0);

/** Marks that combine with the letter before them, and letters written from right to left. */
const JOINED = /\p{M}|[\u0590-\u08ff\ufb1d-\ufdff\ufe70-\ufeff]/u;

export const typefaceOf = (regular: Face, bold: Face, pictures: Pictures): Typeface => ({
  width: (text, size, isBold) => {
    const picture = pictures.get(pictureKey(text, isBold));
    return (picture?.width ?? advance(isBold ? bold : regular, text)) * size;
  },
});

/** How far a text runs, in ems. */
const advance = ({ metadata, kerning }: Face, text: string): number => {
  let [sum, before] = [0, 0];
  for (let i = 0; i < text.length; i++) {
    const glyph = metadata.characterToGlyph(text.charCodeAt(i));
    sum += metadata.widthOfGlyph(glyph) + (before > 0 ? kerning(before, glyph) : 0);
    before = glyph;
  }
  return sum / 1000;
};

/** A text operator of PDF, glyphs as four figures each, with the kerning put between them. */
export const kerned = (operators: string, kerning: Kerning): string =>
  operators.replace(/<([0-9a-f]+)> Tj/g, (all, figures: string) => {
    const glyphs = figures.match(/.{4}/g) ?? [];
    let [run, before] = ['', -1];
    for (const glyph of glyphs) {
      const kern = before < 0 ? 0 : kerning(before, Number.parseInt(glyph, 16));
      run += kern === 0 ? glyph : `>${-kern}<${glyph}`;
      before = Number.parseInt(glyph, 16);
    }
    return run === figures ? all : `[<${run}>] TJ`;
  });
