import { bench, describe } from 'vitest';
import { developStrip } from '../../src/geometry/develop-strip.ts';
import { developability } from '../../src/geometry/developability.ts';
import type { Point3 } from '../../src/geometry/space.ts';
import { triangulateStrip } from '../../src/geometry/triangulate-strip.ts';
import { unrollStrip } from '../../src/geometry/unroll-strip.ts';
import { timing } from '../house/processor-time.ts';
import { polar, row } from './space-rails.ts';

/** A side band that leans and rises unevenly, far from developable; its rails are sampled at n points each. */
const rails = (n: number): readonly [readonly Point3[], readonly Point3[]] => [
  row(n - 1, (t) => polar(90, Math.PI * t, 12 * Math.sin(5 * t))),
  row(n - 1, (t) => polar(105, Math.PI * (t + 0.05 * Math.sin(Math.PI * t)), 60 + 15 * Math.cos(3 * t))),
];

const most = 200;
const COUNTS = [25, 50, 100, most] as const;
/** The sum of what was made, so that no work can be left out. */
let _kept = 0;

/**
 * One group for each part of the work: how its time grows with the points a side is read from the ratios within the
 * group.
 */
const part = (name: string, work: (left: readonly Point3[], right: readonly Point3[]) => () => number) => {
  describe(`${name}, ${most} points a side`, () => {
    for (const n of COUNTS) {
      const once = work(...rails(n));
      bench(
        n === most ? 'ours' : `${n} points a side`,
        () => {
          _kept += once();
        },
        timing,
      );
    }
  });
};

part(
  'rulings chosen among all: n·m',
  (left, right) => () => triangulateStrip(left, right, { choice: Number.POSITIVE_INFINITY }).steps.length,
);
part(
  'rulings chosen by folds among all: n·m',
  (left, right) => () =>
    triangulateStrip(left, right, { choice: Number.POSITIVE_INFINITY, measure: 'fold' }).steps.length,
);
part('rulings chosen twice', (left, right) => () => triangulateStrip(left, right).steps.length);
part('unrolling: linear', (left, right) => {
  const strip = triangulateStrip(left, right);
  return () => unrollStrip(strip).left.length;
});
part('unrolling and fitting both edges', (left, right) => {
  const strip = triangulateStrip(left, right);
  return () => developStrip(strip).left.length;
});
part('measuring how far from flat: linear', (left, right) => {
  const strip = triangulateStrip(left, right);
  return () => developability(strip).meanTwist;
});
