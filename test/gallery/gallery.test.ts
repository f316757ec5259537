import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { svgOf } from './picture.ts';
import { pictures } from './pictures.ts';
import { stepPictures, stepsSvg } from './steps.ts';

/** Set GALLERY=rewrite to draw the stored pictures anew; then look at each that has changed. */
const rewrite = process.env.GALLERY === 'rewrite';
const shelf = join(import.meta.dirname, 'pictures');
const fileOf = (name: string): string => join(shelf, `${name}.svg`);

/** Two engines may round a last digit differently: less than a hair. */
const HAIR = 0.02;
const NUMBER = /-?\d+(?:\.\d+)?/g;

/** How two pictures differ, in words; null where they show the same. */
const difference = (stored: string, drawn: string): string | null => {
  const [was, is] = [stored, drawn].map((svg) => svg.replaceAll(NUMBER, '#').split('\n'));
  const line = is!.findIndex((text, i) => text !== was![i]);
  if (line >= 0 || was!.length !== is!.length) return `line ${line + 1} is of another kind`;
  const [before, after] = [stored, drawn].map((svg) => (svg.match(NUMBER) ?? []).map(Number));
  const moved = after!.findIndex((n, i) => !(Math.abs(n - before![i]!) <= HAIR));
  return moved < 0 ? null : `${before![moved]} has become ${after![moved]}`;
};

/** The pieces of caps, and what their steps show. */
const shown = [
  ...pictures.map((picture) => ({ name: picture.name, draw: () => svgOf(picture) })),
  ...stepPictures.map((picture) => ({ name: picture.name, draw: () => stepsSvg(picture) })),
];

if (rewrite) {
  mkdirSync(shelf, { recursive: true });
  for (const { name, draw } of shown) writeFileSync(fileOf(name), draw());
}

describe('the gallery', () => {
  it.each(shown)('$name is drawn as it was when it was last looked at', ({ name, draw }) => {
    const file = fileOf(name);
    expect(existsSync(file), `there is no stored picture ${name}`).toBe(true);
    expect(difference(readFileSync(file, 'utf8'), draw())).toBeNull();
  });

  it('keeps no picture of what is no longer drawn', () => {
    const names = shown.map(({ name }) => `${name}.svg`).sort();
    expect(readdirSync(shelf).sort()).toEqual(names);
  });

  it('notices a line that moved by half a millimetre and a word that changed', () => {
    const stored = readFileSync(fileOf('flat-top'), 'utf8');
    const moved = stored.replace(/M(-?\d+(?:\.\d+)?)/, (_, n: string) => `M${Number(n) + 0.5}`);
    expect(difference(stored, moved)).toMatch(/has become/);
    expect(difference(stored, stored.replace('Visor', 'Peak'))).toMatch(/of another kind/);
  });
});
