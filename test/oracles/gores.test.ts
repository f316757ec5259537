import { describe, expect, test } from 'vitest';
import { gored } from '../../src/caps/gored/gored.ts';
import { goredParameters } from '../../src/caps/gored/parameters.ts';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { goreStrips } from '../../src/caps/parts/gore/form.ts';
import { goreShape } from '../../src/caps/parts/gore/gore.ts';
import { goreRail } from '../../src/caps/parts/gore/gore-rail.ts';
import { type GoreReach, reachOfGirth } from '../../src/caps/parts/gore/gore-reach.ts';
import { skull } from '../../src/caps/skull/skull.ts';
import { directionAt } from '../../src/geometry/curve.ts';
import { fitPath } from '../../src/geometry/fit.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import type { Path } from '../../src/geometry/path.ts';
import { point } from '../../src/geometry/point.ts';
import { distance3 } from '../../src/geometry/space.ts';
import { unroll } from '../../src/geometry/strip.ts';
import { cutLine } from '../../src/pattern/cut-line.ts';
import { ordinatesOf } from '../../src/pattern/ordinates.ts';
import type { Piece } from '../../src/pattern/piece.ts';
import { inches } from '../../src/units.ts';
import { HEADS } from '../caps/family.ts';
import { widthAt } from '../caps/parts/gore/width-at.ts';
import { strip } from '../pattern/sample-pieces.ts';

const STEPS = 400;

/** The way up a gore from the equator of a ball of some radius to its pole, where the middle of the gore is this far from the axis there. */
const ballReach = (radius: number, equator = radius): GoreReach => {
  const at = (i: number) => (i / STEPS) * (Math.PI / 2);
  const points = Array.from({ length: STEPS + 1 }, (_, i) =>
    point(equator * Math.cos(at(i)), radius * at(i)),
  );
  return fitPath(points, { start: point(0, 1), tolerance: 1e-4 });
};

/** Radians between the long edges where they meet. */
const tipAngle = (right: Path): number => {
  const { x, y } = directionAt(right.at(-1)!, 1);
  return 2 * Math.atan2(-x, y);
};

const degrees = (radians: number): number => (radians * 180) / Math.PI;
const gore = (pieces: readonly Piece[]): Piece => pieces.find(({ id }) => id === 'gore')!;
const edge = (piece: Piece, name: string): Path => piece.outline.find((e) => e.name === name)!.path;

describe('gores of a ball', () => {
  // A. F. Payne, "Patterns for approximate spheres", Popular Science Monthly, vol. 92: a ball of sixteen flat-sided gores.
  test('are cylinder strips 0.3978 of the radius wide where there are sixteen', () => {
    const { bottom } = goreShape(ballReach(100), 16);
    expect(Math.abs(pathLength(bottom) / 100 - 0.3978)).toBeLessThan(5e-5);
    // The same sixteen by an even share of the girth: 0.3927.
    expect(Math.abs((2 * Math.PI) / 16 - 0.3927)).toBeLessThan(5e-5);
  });

  // The tangent rule 2R tan(π/n) cos φ at R φ up the middle, worked to four places by hand for R = 1.
  test.each([
    [4, 2.0],
    [5, 1.4531],
    [6, 1.1547],
    [8, 0.8284],
    [12, 0.5359],
    [18, 0.3527],
  ])('%i of them are %f of the radius wide, and follow the cosine to the pole', (gores, wide) => {
    const { bottom, right } = goreShape(ballReach(100), gores);
    expect(Math.abs(pathLength(bottom) / 100 - wide)).toBeLessThan(5e-5);
    for (let at = 5; at < 90; at += 5) {
      const phi = (at * Math.PI) / 180;
      expect(
        Math.abs(widthAt(right, 100 * phi) - 200 * Math.tan(Math.PI / gores) * Math.cos(phi)),
      ).toBeLessThan(0.01);
    }
  });

  // A mathematics archive's hemisphere in 18 gores: 1.5708 r high, and cos(2k°) of the base wide at 2k° (printed).
  test('in eighteen are a quarter circle high, and narrow by the cosine every two degrees', () => {
    const { bottom, right } = goreShape(ballReach(100), 18);
    expect(Math.abs(right.at(-1)!.to.y / 100 - 1.5708)).toBeLessThan(5e-5);
    const base = pathLength(bottom);
    // The archive's base is the chord, corner to corner on the ball; ours touches the ball along its middle.
    expect(Math.abs((base * Math.cos(Math.PI / 18)) / 100 - 0.3473)).toBeLessThan(5e-5);
    for (let k = 1; k < 45; k++) {
      const phi = (2 * k * Math.PI) / 180;
      expect(Math.abs(widthAt(right, 100 * phi) / base - Math.cos(phi))).toBeLessThan(3e-4);
    }
  });

  test('stand on the ball along their middles, touch its planes, and roll out as they were cut', () => {
    for (const gores of [4, 5, 8, 12]) {
      const crown = { gores, frontSeam: 'seam', reach: ballReach(100) } as const;
      for (const { reach, height } of goreRail(crown.reach))
        expect(Math.abs(Math.hypot(reach, height) - 100)).toBeLessThan(0.02);
      const copies = Array.from({ length: gores }, (_, copy) => ({ piece: 'gore', copy }));
      const { right } = goreShape(crown.reach, gores);
      for (const { strip } of goreStrips(crown, copies, 0)) {
        const flat = unroll(strip);
        for (const [i, p] of flat.right.slice(0, -1).entries())
          expect(Math.abs(p.x - flat.left[i]!.x - widthAt(right, p.y))).toBeLessThan(0.001);
        // A cylinder strip of half-width R tan(π/n) about a level axis: its rulings are level chords.
        expect(strip.left.every((p, i) => Math.abs(p.z - strip.right[i]!.z) < 1e-9)).toBe(true);
        expect(distance3(strip.left.at(-1)!, strip.right.at(-1)!)).toBeLessThan(1e-9);
      }
    }
  });
});

describe('the tips of gores', () => {
  // A gore drafted as an even share of the girth narrowed by the cosine has tips of 2 atan(π/n): less than a full turn together.
  test.each([
    [4, 305],
    [5, 321],
    [6, 332],
    [8, 343],
  ])('drafted as cosines leave a point: %i of them make %i° and not 360', (gores, total) => {
    const girth = inches(24);
    const naive = goreShape(ballReach(girth / (2 * Math.PI), reachOfGirth(girth, gores)), gores);
    expect(Math.abs(pathLength(naive.bottom) - girth / gores)).toBeLessThan(1e-6);
    expect(Math.abs(gores * degrees(tipAngle(naive.right)) - total)).toBeLessThan(0.6);
    for (const goreFullness of [0, 90]) {
      const values = { ...defaultsOf(goredParameters), gores, goreFullness };
      const right = edge(gore(gored.draft(values, HEADS[3]!).pattern.pieces), 'right');
      expect(Math.abs(gores * degrees(tipAngle(right)) - 360)).toBeLessThan(1e-6);
    }
  });

  test('drafted as cosines have the widths of the trade: girth 24 in six gores, every inch up to the pole', () => {
    // (G/n) cos(2πh/G), inches.
    const widths = [4, 3.864, 3.464, 2.828, 2, 1.035, 0];
    const shape = goreShape(ballReach(inches(24) / (2 * Math.PI), reachOfGirth(inches(24), 6)), 6);
    // As its ordinates are given to be drawn by hand: half of each to the right of the fold.
    const outline = (['bottom', 'right', 'left'] as const).map((name) => ({
      name,
      kind: 'gore' as const,
      path: shape[name],
    }));
    const { along, ordinates } = ordinatesOf(strip(100, 150, { outline, notches: [] }), () => inches(1));
    expect(along).toBe('left side');
    expect(ordinates).toHaveLength(widths.length);
    for (const [i, w] of widths.entries())
      expect(Math.abs(2 * ordinates[i]!.spans[0]![1] - inches(w))).toBeLessThan(inches(0.001));
  });

  test('make a full turn together at every number of gores, and at the ends of every range', () => {
    for (const style of [gored, skull]) {
      const rows = style.parameters;
      for (const gores of [4, 5, 6, 7, 8, 9, 10, 11, 12]) {
        for (const key of ['crownRoom', 'goreWidest', 'goreFullness', 'ease']) {
          const row = rows[key];
          if (row?.kind !== 'length' && row?.kind !== 'ratio') continue;
          for (const value of [row.min, row.default, row.max]) {
            const values = { ...defaultsOf(rows), gores, [key]: value } as never;
            if (style.problems(values, HEADS[3]!).length > 0) continue;
            const piece = gore(style.draft(values, HEADS[3]!).pattern.pieces);
            expect(Math.abs(gores * degrees(tipAngle(edge(piece, 'right'))) - 360)).toBeLessThan(1e-6);
            // Square to the lower edge, which would scallop at every seam otherwise.
            expect(Math.abs(directionAt(edge(piece, 'right')[0]!, 0).x)).toBeLessThan(1e-9);
          }
        }
      }
    }
  });
});

describe('the lower edges of gores', () => {
  test('make the finished girth together: every number of gores on every head', () => {
    for (const head of HEADS) {
      for (const gores of [4, 5, 6, 7, 8, 9, 10, 11, 12]) {
        for (const style of [gored, skull]) {
          const values = { ...defaultsOf(style.parameters), gores, ease: 10 } as never;
          if (style.problems(values, head).length > 0) continue;
          const base = pathLength(edge(gore(style.draft(values, head).pattern.pieces), 'bottom'));
          expect(Math.abs(base * gores - head.girth - 10)).toBeLessThan(1e-6);
        }
      }
    }
  });

  // A published home rule: eight panels, each a quarter of the head.
  test('are an eighth of the girth where there are eight, and not the quarter that a published rule gives', () => {
    const head = { ...HEADS[3]!, girth: inches(22.5) };
    const values = { ...defaultsOf(goredParameters), ease: 0, gores: 8 };
    const base = pathLength(edge(gore(gored.draft(values, head).pattern.pieces), 'bottom'));
    expect(Math.abs(base - inches(2.8125))).toBeLessThan(1e-6);
    const published = head.girth / 4;
    expect(Math.abs(8 * published - 2 * 8 * base)).toBeLessThan(1e-6);
    expect(8 * published).toBeGreaterThan(head.girth + inches(22));
  });

  // A 1948 home hat book, as reported: six pieces, seams of 1/3 in for 22 1/2 and of 1/2 in for 21 1/2.
  test('lose two inches, and not the one of a published rule, where six cut gores are sewn a sixth further in', () => {
    const head = { ...HEADS[3]!, girth: inches(22.5) };
    const values = { ...defaultsOf(goredParameters), ease: 0, gores: 6, allowance: inches(1 / 3) };
    const { pieces, allowances } = gored.draft(values, head).pattern;
    const piece = gore(pieces);
    const [bottom] = cutLine(piece, allowances);
    const cut = pathLength(bottom!);
    expect(Math.abs(cut - pathLength(edge(piece, 'bottom')) - inches(2 / 3))).toBeLessThan(0.01);
    const sewn = (seam: number) => 6 * (cut - 2 * inches(seam));
    expect(Math.abs(sewn(1 / 3) - inches(22.5))).toBeLessThan(0.1);
    expect(Math.abs(sewn(1 / 2) - inches(20.5))).toBeLessThan(0.1);
    // What the rule wanted: a draft for 21 1/2.
    const smaller = gored.draft(values, { ...head, girth: inches(21.5) }).pattern.pieces;
    expect(Math.abs(6 * pathLength(edge(gore(smaller), 'bottom')) - inches(21.5))).toBeLessThan(1e-6);
  });
});
