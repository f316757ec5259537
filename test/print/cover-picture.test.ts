import { describe, expect, test } from 'vitest';
import type { WornDrawing } from '../../src/drawing/worn-drawing.ts';
import { boundsOf } from '../../src/geometry/bounds.ts';
import { pictureIn } from '../../src/print/cover/picture.ts';

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
