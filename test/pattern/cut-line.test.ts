import { EndType, inflatePathsD, JoinType, PointInPolygonResult, pointInPolygonD } from 'clipper2-ts';
import { describe, expect, it } from 'vitest';
import { boundsOf } from '../../src/geometry/bounds.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { curveLength, pathLength } from '../../src/geometry/measure.ts';
import { pathEnd, pathStart } from '../../src/geometry/path.ts';
import type { Point } from '../../src/geometry/point.ts';
import { cutLine } from '../../src/pattern/cut-line.ts';
import { inches } from '../../src/units.ts';
import { expectNear, expectSamePoint } from '../geometry/near.ts';
import {
  allowances,
  crescent,
  disc,
  even,
  samplePieces,
  sector,
  strip,
  withoutAllowance,
} from './sample-pieces.ts';

describe('the cut line', () => {
  it('of a tip of radius 4.138 in with a quarter inch is a circle of 4.388 in (common practice)', () => {
    const cut = cutLine(disc(inches(4.138)), even(inches(0.25))).flat();
    const { min, max } = boundsOf(cut);
    expectNear((max.x - min.x) / 2, inches(4.388), 1e-9);
    expectNear(pathLength(cut), 2 * Math.PI * inches(4.388), 1e-6);
    expect(cut.every((curve) => curve.kind === 'arc')).toBe(true);
  });

  it('of a half side band is the ring sector of 13.75 to 16.25 in with arcs 1/4 in nearer and farther', () => {
    // 0.8 rad between radii of 13.75 and 16.25 in: edges of 11 and 13 in (common practice for 22 in and 26 in girths).
    const piece = sector(inches(11), inches(13), inches(2.5));
    const cut = cutLine(piece, even(inches(0.25)));
    const [bottom, , top] = cut.map((path) => path.filter((c) => c.kind === 'arc'));
    const radii = [bottom![0]!, top![0]!].map((a) => curveLength(a) / Math.abs(a.sweep));
    expectNear(radii[0]!, inches(13.5), 1e-6);
    expectNear(radii[1]!, inches(16.5), 1e-6);
  });

  it('stands off each edge of a band by that edge’s own width', () => {
    const { min, max } = boundsOf(cutLine(strip(560, 40), allowances).flat());
    expectNear(min.y, -allowances.lower, 1e-9);
    expectNear(max.y, 40 + allowances.band, 1e-9);
    expectNear(max.x, 280 + allowances.side, 1e-9);
  });

  it('has one path for each edge, closed into a chain', () => {
    for (const piece of samplePieces) {
      const cut = cutLine(piece, allowances);
      expect(cut).toHaveLength(piece.outline.length);
      cut.forEach((path, i) => {
        expectSamePoint(pathEnd(path), pathStart(cut[(i + 1) % cut.length]!), 1e-6);
      });
    }
  });

  it('agrees with an independent offsetting library (clipper2-ts) within 0.02 mm, at one width all round', () => {
    for (const piece of samplePieces) {
      const stitch = flatten(
        piece.outline.flatMap((e) => e.path),
        0.001,
      ).slice(0, -1);
      const offset = (by: number) =>
        inflatePathsD([stitch], by, JoinType.Miter, EndType.Polygon, 4, 4, 0.001)[0]!;
      const [wider, narrower] = [offset(6.37), offset(6.33)];
      // The two tips of a crescent are sharper than a right angle: each library blunts them in its own way.
      const isTip = ({ x, y }: Point) => piece.id === 'visor' && Math.hypot(Math.abs(x) - 95, y) < 16;
      const ours = flatten(cutLine(piece, even(6.35)).flat(), 0.01).filter((p) => !isTip(p));
      expect(ours.length).toBeGreaterThan(4);
      for (const p of ours) {
        expect(pointInPolygonD(p, wider)).toBe(PointInPolygonResult.IsInside);
        expect(pointInPolygonD(p, narrower)).toBe(PointInPolygonResult.IsOutside);
      }
    }
  });

  it('of a stiffener is its stitch line', () => {
    const piece = withoutAllowance(crescent(190, 40, 55));
    expect(cutLine(piece, allowances)).toEqual(piece.outline.map((e) => e.path));
  });
});
