import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Brim, brim } from '../../../src/caps/parts/brim/brim.ts';
import { brimEdgeSeam, brimInnerSeam, brimJoinSeams } from '../../../src/caps/parts/brim/brim-seams.ts';
import { type BrimSlope, brimShape, outerGirth } from '../../../src/caps/parts/brim/brim-slope.ts';
import { brimStrips } from '../../../src/caps/parts/brim/form.ts';
import type { BrimMake } from '../../../src/caps/parts/brim/parameters.ts';
import { brimProblems } from '../../../src/caps/parts/brim/problems.ts';
import { stitchRows } from '../../../src/caps/parts/brim/stitch-rows.ts';
import { areaOf } from '../../../src/geometry/area.ts';
import { curveAt, directionAt } from '../../../src/geometry/curve.ts';
import { pathLength, pointAt } from '../../../src/geometry/measure.ts';
import { ovalOfGirth } from '../../../src/geometry/oval.ts';
import { parallelAngle, parallelGirth } from '../../../src/geometry/oval-parallel.ts';
import { distance, dot, subtract } from '../../../src/geometry/point.ts';
import { distance3 } from '../../../src/geometry/space.ts';
import type { Side } from '../../../src/pattern/chain.ts';
import type { Cloth } from '../../../src/pattern/piece.ts';
import { checkSeams } from '../../../src/pattern/seam-check.ts';
import { degrees } from '../../../src/units.ts';
import { outlineOf } from '../family.ts';

const GIRTH = 580;
const slopeOf = (ratio: number, out: number, width: number, drop: number): BrimSlope => ({
  opening: { oval: ovalOfGirth(GIRTH - 2 * Math.PI * out, ratio), out },
  width,
  drop: degrees(drop),
});

const MAKE: BrimMake = {
  brimPieces: 'whole',
  brimHalves: 'sides',
  brimUnder: 'outer',
  brimBody: 'one',
  brimStitched: true,
  brimRowSpacing: 7,
};
const MAKES: readonly BrimMake[] = [
  MAKE,
  { ...MAKE, brimPieces: '2' },
  { ...MAKE, brimPieces: '2', brimHalves: 'centre' },
  { ...MAKE, brimPieces: '3' },
  { ...MAKE, brimPieces: '4' },
];

/** A crown's lower edge with a notch at each side and the front; and one of six gores, a seam in front. */
const plainEdge: Side = {
  length: GIRTH,
  stops: [1, 2, 3].map((n) => ({ at: (GIRTH * n) / 4, count: 1, name: 'Side band, quarter' })),
  joints: [0, GIRTH],
};
const goredEdge: Side = {
  length: GIRTH,
  stops: [],
  joints: [0, 1, 2, 3, 4, 5, 6].map((n) => (GIRTH * n) / 6),
};
/** Five gores, a whole one in front with its middle marked. */
const fiveGores: Side = {
  length: GIRTH,
  stops: [{ at: GIRTH / 2, count: 1, name: 'Gore, centre front' }],
  joints: [0, 1, 2, 3, 4, 5].map((n) => (GIRTH * n) / 5),
};

const seamsOf = (made: Brim) =>
  checkSeams({
    pieces: made.pieces,
    seams: [...brimJoinSeams(made), brimEdgeSeam(made), brimInnerSeam(made)],
    allowances: {} as never,
  });

describe('a brim', () => {
  test('is as long along its inner edge as the opening and along its outer one as 2π · width · cos drop more, on any oval and in any pieces', () => {
    for (const [ratio, out, width, drop] of [
      [1, 0, 70, 30],
      [0.8, 0, 110, 15],
      [0.72, 6, 130, 5],
      [0.85, 12, 60, 60],
      [0.8, 0, 100, 0],
    ] as const) {
      const slope = slopeOf(ratio, out, width, drop);
      for (const make of MAKES) {
        const made = brim(slope, make, plainEdge);
        const [edge, inner] = seamsOf(made).slice(-2);
        expect(Math.abs(inner!.a - GIRTH)).toBeLessThan(0.03);
        expect(Math.abs(edge!.a - (GIRTH + 2 * Math.PI * width * Math.cos(degrees(drop))))).toBeLessThan(
          0.05,
        );
        for (const seam of seamsOf(made)) {
          expect(Math.abs(seam.difference), seam.seam.name).toBeLessThan(1e-9);
          expect(seam.notches.unmatched).toEqual([]);
        }
      }
    }
  });

  test('is equally wide all round, measured square to its edge', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.72, max: 1, noNaN: true }),
        fc.double({ min: 30, max: 160, noNaN: true }),
        fc.double({ min: 20, max: 75, noNaN: true }),
        (ratio, width, drop) => {
          const { bottom, top } = brimShape(slopeOf(ratio, 0, width, drop), { from: -0.25, to: 0.25 });
          for (const curve of top) {
            const [at, along] = [curveAt(curve, 0.37), directionAt(curve, 0.37)];
            const across = { x: -along.y, y: along.x };
            // The inner edge runs from right to left: the outer edge is a width away on its left, and nowhere nearer.
            const foot = { x: at.x + across.x * width, y: at.y + across.y * width };
            const n = 400;
            const points = Array.from({ length: n + 1 }, (_, i) =>
              pointAt(bottom, (pathLength(bottom) * i) / n),
            );
            const near = points.reduce((p, q) => (distance(p, at) < distance(q, at) ? p : q));
            expect(Math.abs(distance(near, at) - width)).toBeLessThan(0.05);
            expect(Math.abs(dot(subtract(near, foot), across))).toBeLessThan(0.05);
          }
        },
      ),
      { numRuns: 15 },
    );
  });

  test('has the area of its surface: width times the mean of both girths, whatever the oval', () => {
    for (const ratio of [1, 0.8]) {
      const slope = slopeOf(ratio, 0, 90, 20);
      for (const make of MAKES) {
        const made = brim(slope, make, plainEdge);
        const area = made.places.reduce(
          (sum, { piece }) => sum + areaOf(outlineOf(made.pieces.find((p) => p.id === piece)!)),
          0,
        );
        expect(
          Math.abs(area / ((90 * (GIRTH + outerGirth(slope))) / 2) - 1),
          // The edges are fitted within 0.005 mm.
        ).toBeLessThan((2 * 0.005) / 90);
      }
    }
  });

  test('stands in strips that share their end rulings and lie at the drop below the opening', () => {
    const slope = slopeOf(0.8, 5, 90, 20);
    for (const make of MAKES) {
      const strips = brimStrips(slope, brim(slope, make, plainEdge).places);
      strips.forEach(({ strip, open }, i) => {
        expect(open).toBe(true);
        const next = strips[(i + 1) % strips.length]!.strip;
        expect(distance3(strip.left.at(-1)!, next.left[0]!)).toBeLessThan(1e-9);
        expect(distance3(strip.right.at(-1)!, next.right[0]!)).toBeLessThan(1e-9);
        for (const [j, p] of strip.left.entries()) {
          expect(p.z).toBeCloseTo(0, 12);
          expect(strip.right[j]!.z).toBeCloseTo(-90 * Math.sin(degrees(20)), 9);
        }
      });
    }
  });

  test('goes from the centre back over the wearer’s right to the front', () => {
    const slope = slopeOf(0.8, 0, 90, 20);
    const { oval } = slope.opening;
    const made = brim(slope, { ...MAKE, brimPieces: '4' }, plainEdge);
    const [first] = brimStrips(slope, made.places);
    expect(first!.strip.left[0]!.y).toBeCloseTo(-oval.halfLength, 9);
    expect(first!.strip.left.at(-1)!.x).toBeCloseTo(oval.halfBreadth, 9);
  });

  test('comes in the pieces of the trade: a ring, halves, sections, quarters, cut for both layers', () => {
    const cut = (ratio: number, make: BrimMake, meets = plainEdge) =>
      brim(slopeOf(ratio, 0, 90, 20), make, meets).pieces.map(
        ({ name, cuts, foldable }) =>
          `${name}: ${cuts[0]!.count}/${cuts[0]!.mirrored ?? 0}${foldable ? ' fold' : ''}`,
      );
    const [whole, halves, centre, thirds, quarters] = MAKES as [
      BrimMake,
      BrimMake,
      BrimMake,
      BrimMake,
      BrimMake,
    ];
    expect(cut(0.8, whole)).toEqual(['Brim: 2/0 fold']);
    expect(cut(0.8, halves)).toEqual(['Brim, back: 2/0 fold', 'Brim, front: 2/0 fold']);
    expect(cut(0.8, centre)).toEqual(['Brim: 4/0 fold']);
    expect(cut(0.8, thirds)).toEqual(['Brim, back: 4/2', 'Brim, front: 2/0 fold']);
    expect(cut(0.8, quarters)).toEqual(['Brim: 8/4']);
    expect(cut(1, quarters)).toEqual(['Brim: 8/0 fold']);
    // Six gores notch front and back quarters as mirror images of each other, five do not.
    expect(cut(1, quarters, goredEdge)).toEqual(['Brim: 8/4']);
    expect(cut(1, quarters, fiveGores)).toEqual(['Brim, back: 4/2', 'Brim, front: 4/2']);
    expect(cut(1, centre, fiveGores)).toEqual(['Brim: 4/2']);
  });

  test('sews every edge of every copy of both layers once, as many face down as face up where they are mirrored', () => {
    for (const meets of [plainEdge, goredEdge, fiveGores]) {
      for (const make of MAKES) {
        const made = brim(slopeOf(0.8, 0, 90, 20), make, meets);
        const used = new Map<string, number>();
        for (const { piece, copy, edge, from, to } of [
          ...made.upper.inner,
          ...made.under.inner,
          ...made.upper.outer,
          ...made.under.outer,
          ...[...made.upper.joins, ...made.under.joins].flatMap(({ a, b }) => [a, b]),
        ]) {
          const path = made.pieces.find((p) => p.id === piece)!.outline.find((e) => e.name === edge)!.path;
          const key = `${piece} ${copy} ${edge}`;
          const part = ((to ?? pathLength(path)) - (from ?? 0)) / pathLength(path);
          used.set(key, (used.get(key) ?? 0) + part);
        }
        const copies = made.pieces.reduce((sum, { cuts }) => sum + cuts[0]!.count, 0);
        expect(used.size).toBe(4 * copies);
        for (const [key, times] of used) expect(times, key).toBeCloseTo(1, 9);
      }
    }
  });

  test('meets a gored crown at every seam of it', () => {
    for (const meets of [goredEdge, fiveGores]) {
      for (const make of MAKES) {
        const made = brim(slopeOf(0.8, 0, 90, 20), make, meets);
        let reached = 0;
        const stops: number[] = [];
        for (const { piece, backwards, from, to } of made.upper.inner) {
          const known = made.pieces.find((p) => p.id === piece)!;
          const whole = pathLength(known.outline.find((e) => e.name === 'inner')!.path);
          const [start, end] = [from ?? 0, to ?? whole];
          stops.push(reached, reached + end - start);
          for (const { at, edge } of known.notches) {
            const along = backwards ? whole - at : at;
            if (edge === 'inner' && along > start - 0.01 && along < end + 0.01)
              stops.push(reached + along - start);
          }
          reached += end - start;
        }
        for (const joint of meets.joints) {
          expect(
            stops.some((at) => Math.abs(at - joint) < 0.05),
            `${joint}`,
          ).toBe(true);
        }
      }
    }
  });

  test('cannot be one ring where its ends would run into each other, and can from the drop that is offered', () => {
    const allowances = { side: 10, lower: 10, brimEdge: 10 } as never;
    for (const ratio of [1, 0.72]) {
      const level = slopeOf(ratio, 0, 90, 3);
      expect(brimProblems({ brimPieces: '2' }, level, allowances)).toEqual([]);
      const [problem] = brimProblems({ brimPieces: 'whole' }, level, allowances);
      expect(problem!.field).toBe('cap.brimDrop');
      const mended = { ...level, drop: problem!.nearest! };
      expect(brimProblems({ brimPieces: 'whole' }, mended, allowances)).toEqual([]);
      const short = { ...level, drop: problem!.nearest! - degrees(1.5) };
      expect(brimProblems({ brimPieces: 'whole' }, short, allowances)).toHaveLength(1);
    }
    // Off a round opening the ends lean half the wedge, 180° · (1 − cos drop), off the centre line.
    const round = slopeOf(1, 0, 90, 20);
    const half = Math.PI * (1 - Math.cos(round.drop));
    const radius = GIRTH / (2 * Math.PI) / Math.cos(round.drop);
    const apart = 2 * ((radius - 10) * Math.sin(half) - 10 * Math.cos(half));
    expect(apart).toBeGreaterThan(4);
    const wide = { side: 10 + (apart - 4) / (2 * Math.cos(half)), lower: 10, brimEdge: 10 };
    const wider = { ...wide, side: wide.side + 0.05 };
    expect(
      brimProblems({ brimPieces: 'whole' }, round, { ...wide, side: wide.side - 0.05 } as never),
    ).toEqual([]);
    expect(brimProblems({ brimPieces: 'whole' }, round, wider as never)).toHaveLength(1);
  });

  test('has as many rows of topstitching as fit between 6 mm from the edge and 6 mm from the crown', () => {
    expect(stitchRows(54, 7)).toBe(7);
    expect(stitchRows(30, 20)).toBe(1);
    expect(stitchRows(66, 6)).toBe(10);
  });
});

describe('the cloths of a brim', () => {
  /** How many whole rings are cut from a cloth, by its area. */
  const ringsOf = (make: BrimMake, cloth: Cloth): number => {
    const slope = slopeOf(1, 0, 70, 30);
    const made = brim(slope, make, plainEdge);
    const cut = made.pieces.flatMap((piece) =>
      piece.cuts.filter((one) => one.cloth === cloth).map(({ count }) => count * areaOf(outlineOf(piece))),
    );
    // A ring of a cone: its width by the mean of its two girths.
    const ring = (70 * (GIRTH + outerGirth(slope))) / 2;
    return cut.reduce((sum, area) => sum + area, 0) / ring;
  };
  const none = { brimBody: 'none' } as const;

  test('are an upper and an under ring, one of them of lining where that is wished', () => {
    for (const make of MAKES) {
      expect(ringsOf({ ...make, ...none }, 'outer')).toBeCloseTo(2, 3);
      expect(ringsOf({ ...make, ...none, brimUnder: 'lining' }, 'outer')).toBeCloseTo(1, 3);
      expect(ringsOf({ ...make, ...none, brimUnder: 'lining' }, 'lining')).toBeCloseTo(1, 3);
    }
  });

  test('and between them no interlining, one layer or two, or one of stiffener, all the way round', () => {
    for (const make of MAKES) {
      const layers = (brimBody: BrimMake['brimBody'], cloth: Cloth) => ringsOf({ ...make, brimBody }, cloth);
      for (const [body, interlining, stiffener] of [
        ['none', 0, 0],
        ['one', 1, 0],
        ['two', 2, 0],
        ['stiffener', 0, 1],
      ] as const) {
        expect(layers(body, 'interlining'), body).toBeCloseTo(interlining, 3);
        expect(layers(body, 'stiffener'), body).toBeCloseTo(stiffener, 3);
      }
    }
  });
});

describe('the parallel of an oval', () => {
  test('is divided into parts of its own length', () => {
    const parallel = { oval: ovalOfGirth(540, 0.75), out: 14 };
    const { oval, out } = parallel;
    const n = 20_000;
    const at = (t: number) => {
      const normal = Math.atan2(oval.halfBreadth * Math.sin(t), oval.halfLength * Math.cos(t));
      return {
        x: oval.halfBreadth * Math.cos(t) + out * Math.cos(normal),
        y: oval.halfLength * Math.sin(t) + out * Math.sin(normal),
      };
    };
    for (const part of [1 / 3, 0.1, 0.77, 1]) {
      const end = parallelAngle(parallel, part);
      let length = 0;
      for (let i = 0; i < n; i++) {
        const t = (k: number) => -Math.PI / 2 + ((end + Math.PI / 2) * k) / n;
        length += distance(at(t(i)), at(t(i + 1)));
      }
      expect(length).toBeCloseTo(part * parallelGirth(parallel), 4);
    }
  });
});
