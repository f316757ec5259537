import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import fc from 'fast-check';
import { jsPDF } from 'jspdf';
import { describe, expect, it } from 'vitest';
import { blockSize, placedLines } from '../../src/drawing/text-block.ts';
import { textWidth } from '../../src/drawing/text-width.ts';
import { wrapped, wrappedInto } from '../../src/drawing/wrap.ts';
import { point } from '../../src/geometry/point.ts';
import { expectNear } from '../geometry/near.ts';

const ASCII = Array.from({ length: 95 }, (_, i) => String.fromCharCode(32 + i));

/** Widths by an independent reader of the font file (jsPDF), in ems. */
const measureWith = (file: string) => {
  const { resolve } = createRequire(import.meta.url);
  const pdf = new jsPDF();
  const font = readFileSync(resolve(`@expo-google-fonts/source-sans-3/${file}`));
  pdf.addFileToVFS('font.ttf', font.toString('base64'));
  pdf.addFont('font.ttf', 'font', 'normal');
  pdf.setFont('font');
  // At 72/25.4 points an em is 1 mm.
  pdf.setFontSize(72 / 25.4);
  return (text: string): number => pdf.getTextWidth(text);
};

describe('the width of a text', () => {
  it('is that of the typeface, letter by letter, as read from its file by jsPDF', () => {
    const [regular, bold] = [
      measureWith('400Regular/SourceSans3_400Regular.ttf'),
      measureWith('600SemiBold/SourceSans3_600SemiBold.ttf'),
    ];
    for (const c of ASCII) {
      expectNear(textWidth(c), regular(c), 0.001);
      expectNear(textWidth(c, true), bold(c), 0.001);
    }
    expectNear(textWidth('·'), regular('·'), 0.03);
  });

  it('is not taken too narrow where the letters are not English', () => {
    const regular = measureWith('400Regular/SourceSans3_400Regular.ttf');
    for (const text of ['Größe für Übermütige', 'Čepice pro tubu', 'Кепка для тубы', 'Καπέλο']) {
      expect(textWidth(text)).toBeGreaterThanOrEqual(regular(text) * 0.99);
    }
  });
});

const words = fc.array(fc.constantFrom('cut', 'girth', 'allowance', 'on', 'fold', '55.9'), {
  minLength: 1,
  maxLength: 6,
});
const phrases = fc.array(
  words.map((w) => w.join(' ')),
  { minLength: 1, maxLength: 8 },
);

describe('phrases run together on lines', () => {
  it('lose nothing and keep their order', () => {
    fc.assert(
      fc.property(phrases, fc.double({ min: 2, max: 40, noNaN: true }), (list, width) => {
        const letters = (texts: readonly string[]) =>
          texts.join(' ').replaceAll('·', '').replace(/\s+/g, ' ');
        expect(letters(wrapped(list, width))).toBe(letters(list));
      }),
    );
  });

  it('keep within the width unless one word is wider', () => {
    fc.assert(
      fc.property(phrases, fc.double({ min: 5, max: 40, noNaN: true }), (list, width) => {
        for (const line of wrapped(list, width)) expect(textWidth(line)).toBeLessThanOrEqual(width + 1e-9);
      }),
    );
  });

  it('keep within any width a piece can have even where a name has no spaces', () => {
    for (const name of ['帽'.repeat(60), 'w'.repeat(120)])
      for (const width of [2, 8, 20]) {
        const lines = wrapped(['Outer: cut 1', name, 'For Cornet'], width);
        for (const line of lines) expect(textWidth(line)).toBeLessThanOrEqual(Math.max(width, 8) + 1e-9);
        expect(lines.join('').replaceAll(/[ ·]/g, '')).toBe(`Outer:cut1${name}ForCornet`);
      }
  });

  it('break no word of the trade, however narrow', () => {
    for (const word of ['interlining', 'topstitching', 'Stabilizer', 'measurements'])
      expect(wrapped([`${word} ${word}`], 1)).toEqual([word, word]);
  });

  it('fill no more lines than were asked for', () => {
    fc.assert(
      fc.property(phrases, fc.integer({ min: 1, max: 5 }), (list, count) => {
        expect(wrappedInto(list, count, 0).length).toBeLessThanOrEqual(count);
      }),
    );
  });

  it('never part a figure from its unit or its fraction', () => {
    for (const width of [4, 6, 8, 10]) {
      const lines = wrapped(['smaller by 0.15 cm all round', 'leave 1 1/2 in open'], width);
      for (const figure of ['0.15 cm', '1 1/2 in']) expect(lines.join('|')).toContain(figure);
    }
  });

  it('break no phrase that is shorter than the line', () => {
    expect(wrapped(['Outer: cut 2', 'Finished girth 55.9 cm'], 12)).toEqual([
      'Outer: cut 2',
      'Finished girth 55.9 cm',
    ]);
  });
});

describe('a block of text', () => {
  const block = {
    kind: 'text',
    role: 'label',
    at: point(10, 20),
    lines: ['Tip', 'Outer: cut 1'],
    size: 4,
    align: 'start',
    angle: 0,
  } as const;

  it('stands with the middle of its capitals on its point, lines below each other', () => {
    const [a, b] = placedLines(block);
    // Capitals of Source Sans 3 are 0.66 em tall (the typeface’s own figure).
    expectNear((a!.at.y + b!.at.y) / 2 + 0.33 * 4, 20, 1e-9);
    expect(a!.at.y).toBeGreaterThan(b!.at.y + 4);
    expect(a!.at.x).toBe(10);
  });

  it('turns about its point as a whole', () => {
    const [a, b] = placedLines({ ...block, angle: Math.PI / 2 });
    // A quarter to the left: what was below is to the right.
    expect(b!.at.x).toBeGreaterThan(a!.at.x + 4);
    expectNear(a!.at.y, 20, 1e-9);
  });

  it('is as wide as its widest line', () => {
    expectNear(blockSize(block).width, textWidth('Outer: cut 1') * 4, 1e-9);
  });
});
