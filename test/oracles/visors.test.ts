// Visors moved in and out judged by clipper2-ts 2 (BSL-1.0, on npm), which offsets the polygon of the whole outline at once.
import { Clipper, EndType, JoinType } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { visorMoved } from '../../src/caps/parts/visor/visor.ts';
import { insertShape } from '../../src/caps/parts/visor/visor-insert.ts';
import { type VisorShape, type VisorWish, visorShape } from '../../src/caps/parts/visor/visor-shape.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { ovalOfGirth } from '../../src/geometry/oval.ts';
import { type Path, pathStart } from '../../src/geometry/path.ts';
import { distance, type Point, point } from '../../src/geometry/point.ts';
import { deviation } from '../geometry/deviation.ts';

const [FINE, COARSE] = [2e-4, 2e-3];
const outlineOf = ({ outer, inner }: VisorShape): Path => [...outer, ...inner];
const pointsOf = (shape: VisorShape): Point[] => flatten(outlineOf(shape), FINE).slice(0, -1);

const byClipper = (shape: VisorShape, by: number): Point[] => {
  const found = Clipper.inflatePathsD([pointsOf(shape)], by, JoinType.Miter, EndType.Polygon, 2.01, 6, FINE);
  return [...found].sort((p, q) => Clipper.areaD(q) - Clipper.areaD(p))[0] ?? [];
};

/** How far either line strays from the other, mm, where it is not near a tip: there each shapes a mitre in its own way. */
const strays = (shape: VisorShape, by: number): number => {
  const [mine, theirs] = [pointsOf(visorMoved(shape, by)), byClipper(shape, by)];
  const tips = [pathStart(shape.outer), pathStart(shape.inner)];
  const isAway = (p: Point): boolean => by < 0 || tips.every((tip) => distance(tip, p) > 4 * by);
  return Math.max(deviation(mine.filter(isAway), theirs), deviation(theirs.filter(isAway), mine));
};

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const anyBy = fc.oneof(between(-4, -0.5), between(0.5, 4));

describe('a visor moved all round, judged by clipper2-ts', () => {
  test('strays less than 0.02 mm where it was drafted', () => {
    const drafted = fc.record({
      opening: fc
        .tuple(between(480, 660), between(0.7, 1))
        .map(([girth, ratio]) => ovalOfGirth(girth, ratio)),
      innerEdge: between(150, 240),
      depth: between(40, 90),
      drop: between(0, 0.9),
      fullness: between(0, 1),
      tipRounding: between(5, 12),
    });
    fc.assert(
      fc.property(drafted, anyBy, (wish, by) => {
        expect(strays(visorShape(wish), by)).toBeLessThan(0.02);
      }),
      { numRuns: 60 },
    );
  });

  test('strays less than 0.02 mm where it was bought', () => {
    const bought = fc.record({
      width: between(150, 200),
      depth: between(45, 70),
      bow: between(5, 55),
      widths: fc.constant([]),
    });
    fc.assert(
      fc.property(bought, anyBy, (measures, by) => {
        expect(strays(insertShape(measures), by)).toBeLessThan(0.02);
      }),
      { numRuns: 60 },
    );
  });
});

describe('the outer edge of a drafted visor, judged by clipper2-ts', () => {
  /** What its rounding is about: a superellipse standing on the line that is a tip radius out from the opening. */
  const core = ({
    innerEdge,
    depth,
    fullness,
    tipRounding: r,
  }: Omit<VisorWish, 'opening' | 'drop'>): Point[] => {
    const [power, half] = [1.6 * 2.5 ** fullness, innerEdge / 2];
    return Array.from({ length: 601 }, (_, i) => {
      const turn = (i / 600) * Math.PI;
      const x = -half * Math.cos(turn);
      const height = Math.sqrt(Math.max(0, 1 - Math.abs(x / half) ** power));
      return point(x, -r - (depth - 2 * r) * height);
    });
  };

  test('is that of its core moved outwards by the tip rounding, however shallow it is', () => {
    const wished = fc
      .record({
        innerEdge: between(100, 240),
        tipRounding: between(3, 20),
        over: fc.oneof(between(0.5, 5), between(5, 60)),
        fullness: between(0, 1),
      })
      .map(({ over, ...wish }) => ({ ...wish, depth: 2 * wish.tipRounding + over }));
    fc.assert(
      fc.property(wished, (wish) => {
        // Hanging straight down it is a stretch of cylinder, which unrolls into the plane that it is drawn in.
        const shape = visorShape({ ...wish, opening: ovalOfGirth(560, 0.8), drop: Math.PI / 2 });
        const [theirs] = Clipper.inflatePathsD(
          [core(wish)],
          wish.tipRounding,
          JoinType.Round,
          EndType.Polygon,
          2,
          6,
          COARSE,
        );
        const mine = flatten(outlineOf(shape), COARSE).slice(0, -1);
        expect(Math.max(deviation(mine, theirs!), deviation(theirs!, mine))).toBeLessThan(0.02);
      }),
      { numRuns: 40 },
    );
  });
});
