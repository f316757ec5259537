import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findRoom, quarterTurned, roomOf } from '../../src/drawing/room.ts';
import { segment, segmentsOf } from '../../src/drawing/segment.ts';
import { boundsOf } from '../../src/geometry/bounds.ts';
import { contains } from '../../src/geometry/inside.ts';
import { crossings } from '../../src/geometry/intersect.ts';
import { circle, line, polygon } from '../../src/geometry/path.ts';
import { distance, point } from '../../src/geometry/point.ts';
import { expectNear, expectSamePoint } from '../geometry/near.ts';
import { crescent } from '../pattern/sample-pieces.ts';

const hall = polygon([point(0, 0), point(100, 0), point(100, 40), point(0, 40)]);
const blockAt = (x: number, y: number, width: number, height: number) =>
  polygon([
    point(x - width / 2, y - height / 2),
    point(x + width / 2, y - height / 2),
    point(x + width / 2, y + height / 2),
    point(x - width / 2, y + height / 2),
  ]);

describe('room for a block', () => {
  it('is where it is wanted when nothing is in the way', () => {
    const found = findRoom(roomOf(segmentsOf(hall), []), { width: 30, height: 10 }, point(40, 20));
    expectSamePoint(found!, point(40, 20));
  });

  it('is beside a line in the way, touching it', () => {
    const wall = [segment(point(50, 0), point(50, 40))];
    const found = findRoom(roomOf(segmentsOf(hall), wall), { width: 30, height: 10 }, point(45, 20));
    expectSamePoint(found!, point(35, 20));
  });

  it('is null where the block is taller, or longer, or only room for it is cut in two', () => {
    const room = roomOf(segmentsOf(hall), []);
    expect(findRoom(room, { width: 10, height: 41 }, point(50, 20))).toBeNull();
    expect(findRoom(room, { width: 101, height: 10 }, point(50, 20))).toBeNull();
    const halves = roomOf(segmentsOf(hall), [segment(point(50, 0), point(50, 40))]);
    expect(findRoom(halves, { width: 60, height: 10 }, point(50, 20))).toBeNull();
  });

  it('can be found lying down where it cannot be found upright', () => {
    const room = quarterTurned(roomOf(segmentsOf(hall), []));
    const found = findRoom(room, { width: 38, height: 90 }, point(20, -50));
    // Lying down, what was x is −y.
    expectNear(found!.x, 20, 1e-9);
    expectNear(found!.y, -50, 1e-9);
  });

  it('never crosses a wall of a crescent, nor a ring in it, wherever it is wanted', () => {
    const walls = crescent(200, 40, 60).outline.flatMap((e) => e.path);
    const ring = circle(point(10, -75), 6);
    const room = roomOf(segmentsOf(walls), segmentsOf(ring));
    const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    let found = 0;
    fc.assert(
      fc.property(mm(-90, 90), mm(-110, 0), mm(5, 90), mm(3, 40), (x, y, width, height) => {
        const at = findRoom(room, { width, height }, point(x, y));
        if (!at) return;
        found += 1;
        // Room is sought among chords, which leave the curve by half a millimetre at most.
        const block = blockAt(at.x, at.y, width - 1.1, height - 1.1);
        expect(crossings(block, walls)).toEqual([]);
        expect(crossings(block, ring)).toEqual([]);
        expect(contains(walls, at)).toBe(true);
        expect(distance(at, point(10, -75))).toBeGreaterThan(Math.min(width, height) / 2);
      }),
      { numRuns: 300 },
    );
    expect(found).toBeGreaterThan(50);
  });

  it('moves without a jump while the piece grows', () => {
    const at = (k: number) => {
      const walls = polygon([point(0, 0), point(80 + k, 0), point(80 + k, 40 + k), point(0, 40 + k)]);
      const wall = [segment(point(40 + k / 2, 0), point(40 + k / 2, 40 + k))];
      return findRoom(roomOf(segmentsOf(walls), wall), { width: 30, height: 12 }, point(42 + k / 2, 22))!;
    };
    for (let k = 0; k < 20; k += 0.25) expect(distance(at(k), at(k + 0.25))).toBeLessThan(0.6);
  });

  it('sees chords that hug their curve', () => {
    const ring = circle(point(0, 0), 100);
    const { min, max } = boundsOf(segmentsOf(ring).map((s) => line(point(s.x1, s.y1), point(s.x2, s.y2))));
    expect(max.x - min.x).toBeGreaterThan(199);
  });
});

describe('two places that are as near', () => {
  const across = (off: number) => segment(point(50 + off, 0), point(50 + off, 40));
  const along = (off: number) => segment(point(0, 20 + off), point(100, 20 + off));
  const block = { width: 30, height: 10 };

  it.each([-1e-9, 0, 1e-9])('are told apart by their side, not by a rounding of %d mm', (off) => {
    const beside = findRoom(roomOf(segmentsOf(hall), [across(off)]), block, point(50, 20));
    expectSamePoint(beside!, point(35, 20));
    const above = findRoom(roomOf(segmentsOf(hall), [along(off)]), block, point(50, 20));
    expect(above!.y).toBeGreaterThan(20);
  });
});
