import { expect, it } from 'vitest';
import { pleatMarks } from '../../../src/drawing/marks/pleat.ts';
import { line, pathEnd, pathStart } from '../../../src/geometry/path.ts';
import { distance, type Point, point } from '../../../src/geometry/point.ts';
import { marksOnHalf } from '../../../src/pattern/fold-marks.ts';
import type { PieceMark } from '../../../src/pattern/piece.ts';

const upright = (x: number) => line(point(x, 0), point(x, 20));
const pleat = (fold: number, place: number): PieceMark => ({
  kind: 'pleat',
  fold: upright(fold),
  place: upright(place),
  name: 'pleat',
});

it('draws a pleat as a fold, the line it is laid on, and an arrow from the fold to that line', () => {
  const [fold, place, shaft, head] = pleatMarks(upright(30), upright(42));
  expect(fold!.role).toBe('fold');
  expect(place!.role).toBe('mark');
  expect(pathStart(shaft!.path).x).toBe(30);
  expect(pathEnd(shaft!.path).x).toBe(42);
  const tip = pathEnd(shaft!.path);
  const nearest = Math.min(...head!.path.map(({ from }: { from: Point }) => distance(from, tip)));
  expect(nearest).toBe(0);
  for (const { from } of head!.path) expect(from.x).toBeLessThanOrEqual(42);
});

it('points the other way where the fold is laid the other way', () => {
  const [, , , head] = pleatMarks(upright(42), upright(30));
  for (const { from } of head!.path) expect(from.x).toBeGreaterThanOrEqual(30);
});

it('keeps the pleats of the half that is drawn, and one alone on the other side with a word', () => {
  const [right, left] = [pleat(30, 42), pleat(-30, -42)];
  expect(marksOnHalf([left, right])).toEqual([right]);
  const [shown] = marksOnHalf([left]);
  expect(shown).toMatchObject({ fold: upright(30), place: upright(42), name: 'pleat, one side only' });
});
