import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaOf } from '../../src/geometry/area.ts';
import { boundsOf } from '../../src/geometry/bounds.ts';
import { contains } from '../../src/geometry/inside.ts';
import { pathLength, pointAt } from '../../src/geometry/measure.ts';
import { line, pathEnd, pathStart } from '../../src/geometry/path.ts';
import { point } from '../../src/geometry/point.ts';
import { cutLine } from '../../src/pattern/cut-line.ts';
import { halved } from '../../src/pattern/fold.ts';
import { FOLD_EDGE } from '../../src/pattern/fold-edge.ts';
import type { Piece } from '../../src/pattern/piece.ts';
import { expectNear, expectSamePoint } from '../geometry/near.ts';
import { allowances, crescent, disc, discFromTheSide, samplePieces, sector, strip } from './sample-pieces.ts';

const half = (piece: Piece) => halved(piece, cutLine(piece, allowances));
const outline = (piece: Piece) => piece.outline.flatMap((e) => e.path);

describe('the half of a piece on the fold', () => {
  it('is a closed counter-clockwise chain right of the fold, and encloses half the area', () => {
    for (const piece of [...samplePieces, discFromTheSide(90)]) {
      const { piece: right } = half(piece);
      right.outline.forEach(({ path }, i) => {
        const next = right.outline[(i + 1) % right.outline.length]!;
        expectSamePoint(pathEnd(path), pathStart(next.path), 1e-9);
      });
      expect(boundsOf(outline(right)).min.x).toBe(0);
      expectNear(areaOf(outline(right)), areaOf(outline(piece)) / 2, 1e-6 * areaOf(outline(piece)));
    }
  });

  it('has a cut line that encloses half of what the whole cut line does', () => {
    for (const piece of samplePieces) {
      const whole = areaOf(cutLine(piece, allowances).flat());
      const { cut, fold } = half(piece);
      expectNear(areaOf([...cut.flat(), fold]), whole / 2, 1e-4 * whole);
      expect([fold.from.x, fold.to.x]).toEqual([0, 0]);
    }
  });

  it('shows at a corner on the fold the mitre of the opened piece, not a square end', () => {
    // A roof: its ridge on the fold, 90 degrees. The mitre stands a · √2 over the ridge.
    const roof = strip(100, 40, {
      outline: [
        { name: 'bottom', kind: 'side', path: [line(point(-50, 0), point(50, 0))] },
        { name: 'right', kind: 'side', path: [line(point(50, 0), point(0, 50))] },
        { name: 'left', kind: 'side', path: [line(point(0, 50), point(-50, 0))] },
      ],
    });
    const { fold } = half(roof);
    expectNear(fold.from.y, 50 + allowances.side * Math.SQRT2, 1e-6);
    expectNear(fold.to.y, -allowances.side, 1e-9);
  });

  it('keeps the notches on its side and on the fold, each at its place', () => {
    const { piece: right } = half(disc(100));
    const places = right.notches.map((n) => {
      const edge = right.outline.find((e) => e.name === n.edge)!;
      return { name: n.name, count: n.count, at: pointAt(edge.path, n.at) };
    });
    expect(places.map((p) => [p.name, p.count])).toEqual([
      ['centre back', 2],
      ['side', 1],
      ['centre front', 1],
    ]);
    expectSamePoint(places[0]!.at, point(0, -100), 1e-6);
    expectSamePoint(places[1]!.at, point(100, 0), 1e-6);
    expectSamePoint(places[2]!.at, point(0, 100), 1e-6);
  });

  it('keeps them too where the edge runs on through its own start', () => {
    const { piece: right } = half(discFromTheSide(100));
    const edge = right.outline.find((e) => e.name === 'rim')!;
    const at = right.notches.map((n) => pointAt(edge.path, n.at));
    const eighth = 100 * Math.SQRT1_2;
    expectSamePoint(at[0]!, point(eighth, eighth), 1e-6);
    expectSamePoint(at[1]!, point(0, 100), 1e-6);
    expectSamePoint(at[2]!, point(eighth, -eighth), 1e-6);
  });

  it('keeps one of two buttons, and says of a gap on the other side that it is for one side only', () => {
    const button = (x: number) =>
      ({ kind: 'button', at: point(x, 12), diameter: 12, name: 'button' }) as const;
    const gap = {
      kind: 'stretch',
      path: [line(point(-150, 40), point(-230, 40))],
      name: 'turning gap',
    } as const;
    const { piece: right } = half(strip(560, 40, { marks: [button(-100), button(100), gap] }));
    expect(right.marks).toHaveLength(2);
    expect(right.marks[0]).toEqual(button(100));
    const [, kept] = right.marks;
    if (kept?.kind !== 'stretch') throw new Error('the gap is lost');
    expect(kept.name).toBe('turning gap, one side only');
    expectNear(pathLength(kept.path), 80, 1e-9);
    expect(boundsOf(kept.path).min.x).toBe(150);
  });

  it('keeps the right half of a gap across the fold', () => {
    const gap = {
      kind: 'stretch',
      path: [line(point(20, 13), point(-20, 13))],
      name: 'turning gap',
    } as const;
    const [kept] = half(strip(240, 13, { marks: [gap] })).piece.marks;
    if (kept?.kind !== 'stretch') throw new Error('the gap is lost');
    expect(kept.name).toBe('turning gap');
    expectNear(pathLength(kept.path), 20, 1e-9);
  });

  it('measures a distance across the fold as the whole, and drops what lies left of it', () => {
    const { piece: right } = half(disc(100));
    const [diameter] = right.dimensions;
    expectNear(diameter!.mm!, 200, 1e-9);
    expectNear(pathLength(diameter!.along), 100, 1e-9);
    const gone = { name: 'Height', along: [line(point(-270, 0), point(-270, 40))] };
    expect(half(strip(560, 40, { dimensions: [gone] })).piece.dimensions).toEqual([]);
  });

  it('carries its grainline and its label on its own side, the grain in the same direction', () => {
    for (const piece of [...samplePieces, sector(150, 150, 60)]) {
      const { piece: right } = half(piece);
      const [from, to] = right.grain;
      const [a, b] = piece.grain;
      expectNear((to.x - from.x) * (b.y - a.y) - (to.y - from.y) * (b.x - a.x), 0, 1e-9);
      for (const p of [from, to, right.labelAt]) {
        expect(p.x).toBeGreaterThan(5);
        expect(contains(outline(right), p)).toBe(true);
      }
    }
  });

  it('is closed along the fold by an edge without allowance, and cannot be folded again', () => {
    const { piece: right, cut } = half(crescent(190, 40, 55));
    expect(right.outline.at(-1)).toMatchObject({ name: FOLD_EDGE, kind: 'none' });
    expect(() => halved(right, cut)).toThrow(RangeError);
  });

  it('has half the length of every edge of a side band, whatever its flare', () => {
    const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(mm(90, 300), mm(0, 60), mm(30, 110), (bottom, more, height) => {
        const whole = sector(bottom, bottom + more, height);
        const right = half(whole).piece;
        for (const name of ['top', 'bottom']) {
          const [a, b] = [whole, right].map((p) => pathLength(p.outline.find((e) => e.name === name)!.path));
          expectNear(b!, a! / 2, 1e-6);
        }
      }),
      { numRuns: 60 },
    );
  });
});
