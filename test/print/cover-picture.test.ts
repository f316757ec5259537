import { describe, expect, test } from 'vitest';
import type { Mark } from '../../src/drawing/drawing.ts';
import { LEADING, textStyles } from '../../src/drawing/roles.ts';
import { textWidth } from '../../src/drawing/text-width.ts';
import type { WornDrawing } from '../../src/drawing/worn-drawing.ts';
import { boundsOf } from '../../src/geometry/bounds.ts';
import { type Box, boxesMeet, boxHeight, boxWidth } from '../../src/geometry/box.ts';
import { coverBlock } from '../../src/print/cover/cover-block.ts';
import { pictureIn } from '../../src/print/cover/picture.ts';
import { sheetGrid } from '../../src/print/sheet-grid.ts';
import { sheetsOf } from '../../src/print/sheets.ts';
import { adultCap, drawn, heading, plainPaper, rectangle } from './samples.ts';

const square: WornDrawing = {
  box: { min: { x: -100, y: -50 }, max: { x: 100, y: 50 } },
  lines: [
    {
      role: 'edge',
      points: [
        { x: -100, y: -50 },
        { x: 100, y: -50 },
        { x: 100, y: 50 },
        { x: -100, y: 50 },
        { x: -100, y: -50 },
      ],
    },
  ],
};

describe('the picture on the first sheet', () => {
  test('is as large as its region allows, in the middle, and not distorted', () => {
    const marks = pictureIn(square, { left: 10, top: 200, width: 50, height: 60 });
    const { min, max } = boundsOf(marks.flatMap((mark) => (mark.kind === 'line' ? mark.path : [])));
    // 200 by 100 in 50 by 60: a quarter of the size, 25 high, 17.5 free above and below.
    expect([min.x, max.x]).toEqual([10, 60]);
    expect([min.y, max.y]).toEqual([200 - 42.5, 200 - 17.5]);
  });
});

/** Lines with all that they go round; words as wide as their letters and as high as their lines. */
const boxAround = (mark: Mark): Box => {
  if (mark.kind === 'line') return boundsOf(mark.path);
  const { at, lines, size, align, role } = mark;
  const wide = Math.max(...lines.map((text) => textWidth(text, textStyles[role].bold) * size));
  const left = at.x - { start: 0, middle: wide / 2, end: wide }[align];
  const half = (lines.length * LEADING * size) / 2;
  return { min: { x: left, y: at.y - half }, max: { x: left + wide, y: at.y + half } };
};

describe('the picture on endless paper', () => {
  const lists = [2, 5, 7, 9, 12, 20, 40].map((count) =>
    Array.from({ length: count }, (_, i) => drawn(`p${i}`, `Lining side band ${i}`, rectangle(60, 40))),
  );

  test('stands free of all else in the block with the test squares, however long the list of pieces is', () => {
    for (const pieces of lists) {
      const paper = { ...plainPaper, paper: 'roll-914' } as const;
      const content = { heading, paper, pieces, cells: [{ row: 0, column: 0 }], grid: sheetGrid(paper) };
      const { marks, bounds } = coverBlock({ ...content, picture: square });
      const { min, max } = boxAround(marks.at(-1)!);
      const title = `${pieces.length} pieces`;
      // The square is twice as wide as it is high, and is not distorted.
      expect(boxWidth({ min, max }), title).toBeGreaterThan(35);
      expect(boxWidth({ min, max }), title).toBeCloseTo(2 * boxHeight({ min, max }), 6);
      expect(min.x, title).toBeGreaterThanOrEqual(bounds.min.x);
      expect(min.y, title).toBeGreaterThanOrEqual(bounds.min.y - 1e-9);
      expect(max.x, title).toBeLessThanOrEqual(bounds.max.x + 1e-9);
      expect(max.y, title).toBeLessThanOrEqual(bounds.max.y + 1e-9);
      for (const mark of marks.slice(0, -1))
        expect(boxesMeet(boxAround(mark), { min, max }), title).toBe(false);
    }
  });

  test('is on a roll and on one page, once', () => {
    for (const paper of ['roll-594', 'roll-1067', 'one-page'] as const) {
      const linesWith = (picture: WornDrawing | null) =>
        sheetsOf(adultCap(), { ...plainPaper, paper }, heading, picture).sheets[0]!.marks.filter(
          ({ kind }) => kind === 'line',
        ).length;
      expect(linesWith(square) - linesWith(null), paper).toBe(square.lines.length);
    }
  });
});
