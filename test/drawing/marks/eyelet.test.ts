import { expect, it } from 'vitest';
import { eyeletMarks } from '../../../src/drawing/marks/eyelet.ts';
import { boundsOf } from '../../../src/geometry/bounds.ts';
import { isClosed } from '../../../src/geometry/path.ts';
import { point } from '../../../src/geometry/point.ts';
import { marksOnHalf } from '../../../src/pattern/fold-marks.ts';
import type { PieceMark } from '../../../src/pattern/piece.ts';
import { expectNear } from '../../geometry/near.ts';

it('shows an eyelet as a hole of its own size with a cross in its middle for the awl', () => {
  const [hole, ...cross] = eyeletMarks(point(30, 80), 6);
  expect(isClosed(hole!.path)).toBe(true);
  const { min, max } = boundsOf(hole!.path);
  expectNear(max.x - min.x, 6, 1e-9);
  expectNear((max.y + min.y) / 2, 80, 1e-9);
  expect(cross).toHaveLength(2);
  for (const { path } of cross) {
    const box = boundsOf(path);
    expectNear((box.min.x + box.max.x) / 2, 30, 1e-9);
    expectNear((box.min.y + box.max.y) / 2, 80, 1e-9);
  }
});

it('keeps an eyelet on the fold on the half that is laid there', () => {
  const eyelet: PieceMark = { kind: 'eyelet', at: point(0, 90), diameter: 6, name: 'eyelet' };
  expect(marksOnHalf([eyelet])).toEqual([eyelet]);
});
