import ellipe from '@stdlib/math-base-special-ellipe';
import { describe, expect, test } from 'vitest';
import { areaOf } from '../../src/geometry/area.ts';
import { directionAt } from '../../src/geometry/curve.ts';
import { developMirrored } from '../../src/geometry/develop-mirrored.ts';
import { type Development, developStrip } from '../../src/geometry/develop-strip.ts';
import { pathLength, pointAt, reversed } from '../../src/geometry/measure.ts';
import { type Arc, line, pathEnd, pathStart, radius } from '../../src/geometry/path.ts';
import { cross, distance, dot } from '../../src/geometry/point.ts';
import { type Point3, point3 } from '../../src/geometry/space.ts';
import { triangulateStrip } from '../../src/geometry/triangulate-strip.ts';
import { expectNear } from '../geometry/near.ts';
import { sampleCurve } from '../geometry/sample-curve.ts';
import { polar, row } from '../geometry/space-rails.ts';
import { stripArea } from '../house/strip-area.ts';

const INCH = 25.4;
const degrees = (radians: number) => (radians * 180) / Math.PI;
/**
 * A seam is cut and sewn to this at best, mm; angles, degrees, such that 100 mm from their corner they are as good.
 */
const [LENGTH, ANGLE] = [0.02, 0.0115];

const areaOfPiece = ({ left, right }: Development) =>
  areaOf([
    ...right,
    line(pathEnd(right), pathEnd(left)),
    ...reversed(left),
    line(pathStart(left), pathStart(right)),
  ]);

/** The half of a cone frustum between two diameters, mm, developed; its rails are sampled unlike each other. */
const halfFrustum = (small: number, large: number, height: number): Development =>
  developStrip(
    triangulateStrip(
      sampleCurve((t) => polar(large / 2, Math.PI * t), 3),
      sampleCurve((t) => polar(small / 2, Math.PI * t, height), 2.3),
    ),
  );

/** Both edges of a developed half frustum as what they should be: one arc each. */
const arcsOf = ({ left, right }: Development): readonly [Arc, Arc] => {
  expect([...left, ...right].map(({ kind }) => kind)).toEqual(['arc', 'arc']);
  return [right[0] as Arc, left[0] as Arc];
};

describe('the handbooks’ cones, unrolled as strips', () => {
  test.each([
    // A classroom page on cone nets prints 7.12, 11.39 and 126.4 (exact figures worked out from its rule).
    ['a classroom’s frustum of 5 and 8, 4 high', 5, 8, 4, 7.12, 11.392, 126.404],
    // Math Central, University of Regina: 33 and a missing wedge of 142; its inner radius is 6.600, though the page
    // prints 6.75.
    ['a lampshade of 8 and 40, 21 high', 8, 40, 21, 6.6, 33.001, 360 - 141.82],
    // E. M. Longfield, Sheet Metal Drafting, 1921, p. 128, sample and problem 30B.
    ['Longfield’s flare from 6 to 3, 3 high', 3, 6, 3, 3.3541, 6.7082, 160.997],
    ['Longfield’s flare from 8 to 4, 4 high', 4, 8, 4, 4.4721, 8.9443, 160.997],
  ])('%s', (_, small, large, height, inner, outer, angle) => {
    const unit = 10;
    const [r, R] = arcsOf(halfFrustum(small * unit, large * unit, height * unit));
    // The figures are printed or kept to four places.
    expectNear(radius(r), inner * unit, LENGTH);
    expectNear(radius(R), outer * unit, LENGTH);
    expectNear(degrees(Math.abs(r.sweep)), angle / 2, ANGLE);
    expectNear(degrees(Math.abs(R.sweep)), angle / 2, ANGLE);
    expectNear(distance(r.centre, R.centre), 0, LENGTH);
  });

  test.each([
    // Longfield, p. 128: areas of 30A and 30B, in².
    [3, 6, 3, 47.417],
    [4, 8, 4, 84.298],
  ])('have the handbook’s area: from %d to %d, %d high', (small, large, height, area) => {
    const made = halfFrustum(small * INCH, large * INCH, height * INCH);
    expectNear((2 * areaOfPiece(made)) / INCH ** 2, area, 0.005);
  });

  // Longfield, problem 19: a cone of base 4 and altitude 7 opens to 98.900° at a slant of 7.2801.
  test('Longfield’s whole cone opens from its tip to 98.9°', () => {
    const rim = sampleCurve((t) => polar(2 * INCH, 2 * Math.PI * t), 2.5);
    const { left, right, flat } = developStrip(triangulateStrip([point3(0, 0, 7 * INCH)], rim));
    expect([...left, ...right].map(({ kind }) => kind)).toEqual(['arc']);
    const [first, last] = [flat.right[0]!, flat.right.at(-1)!];
    const [x, y] = [dot(first, last), cross(first, last)];
    expectNear(Math.hypot(first.x, first.y), 7.2801 * INCH, LENGTH);
    expectNear(degrees(Math.atan2(y, x)), 98.9, ANGLE);
  });

  // A school mensuration text, p. 76: diameters 5 ft 4 and 8 ft 3, slant 10 ft 6. It prints 224 ft² (its fraction is
  // lost; 224 1/8 by
  // its own rule) with π as 22/7. Drawn at a tenth of the size.
  test('a school’s frustum has its slant times the mean of its girths for area', () => {
    const [low, high, slant] = [5 + 1 / 3, 8.25, 10.5].map((feet) => feet * 30.48) as [
      number,
      number,
      number,
    ];
    const [r, R] = [low / 2, high / 2];
    const made = halfFrustum(low, high, Math.sqrt(slant ** 2 - (R - r) ** 2));
    expectNear((2 * areaOfPiece(made)) / 30.48 ** 2, (224.125 / (22 / 7)) * Math.PI, 0.02);
  });
});

describe('a cylinder cut aslant, by the parallel-line method', () => {
  // Rise r·tan(α)·cos(s/r) at s along the girth (E. M. Longfield, Sheet Metal Drafting, 1921, ch. III); for r = 4 and
  // 30° the rises at
  // every 30° are worked out from it: 2.309, 2.000, 1.155, 0, −1.155, −2.000, −2.309.
  test('of radius 4 in and 30° rises 2.309, 2.000, 1.155 in and so on', () => {
    const r = 4 * INCH;
    const base = 100;
    const cut = (t: number) =>
      polar(r, Math.PI * t, base + r * Math.tan(Math.PI / 6) * Math.cos(Math.PI * t));
    const { left, right } = developStrip(
      triangulateStrip(
        sampleCurve((t) => polar(r, Math.PI * t), 2.5),
        sampleCurve(cut, 3),
      ),
    );
    expect(left.map(({ kind }) => kind)).toEqual(['line']);
    expectNear(pathLength(left), Math.PI * r, LENGTH);
    const edge = row(6000, (t) => pointAt(right, t * pathLength(right)));
    const rises = [2.3094, 2, 1.1547, 0, -1.1547, -2, -2.3094];
    const alongs = [0, 2.094, 4.189, 6.283, 8.378, 10.472, 12.566];
    for (const [k, rise] of rises.entries()) {
      const at = edge.reduce((best, p) =>
        Math.abs(p.y - alongs[k]! * INCH) < Math.abs(best.y - alongs[k]! * INCH) ? p : best,
      );
      // The places along are kept to a thousandth of an inch, the points stand 0.06 mm apart: half a slope of that.
      expectNear(at.x - base, rise * INCH, 0.03);
    }
  });

  // The cut face is an ellipse r by r/cos α, whose girth a general numerics library gives (stdlib’s ellipe).
  test('has an edge as long as the ellipse of its cut, and an area of girth times mean height', () => {
    const [r, tilt, base] = [95, Math.PI / 18, 60];
    const rails = [
      sampleCurve((t) => polar(r, 2 * Math.PI * t), 3),
      sampleCurve(
        (t) => polar(r, 2 * Math.PI * t, base + r * Math.tan(tilt) * Math.cos(2 * Math.PI * t)),
        2.6,
      ),
    ] as const;
    const strip = triangulateStrip(...rails);
    const made = developStrip(strip);
    expectNear(pathLength(made.right), 4 * (r / Math.cos(tilt)) * ellipe(Math.sin(tilt) ** 2), LENGTH);
    expectNear(areaOfPiece(made), 2 * Math.PI * r * base, 2 * Math.PI * r * LENGTH);
    // In space, chords of 3 mm cut off h²/24r² of the girth.
    expectNear(stripArea(strip) / (2 * Math.PI * r * base), 1, (9 / 24 / r ** 2) * 1.1);
    // “A 95 mm radius band dipped 10° rises and falls 16.75 mm”.
    const heights = made.flat.right.map(({ x }) => x);
    expectNear((Math.max(...heights) - Math.min(...heights)) / 2, 16.75, 0.01);
  });
});

describe('sphere gores from the edge to the apex', () => {
  const R = 95;
  /**
   * Sides of a gore on the cylinder that touches the sphere along the gore's middle, of a given width at the edge.
   */
  const goreRails = (width: number) => {
    const side = (s: number) =>
      sampleCurve((t: number): Point3 => {
        const latitude = (t * Math.PI) / 2;
        return point3((s * width * Math.cos(latitude)) / 2, R * Math.cos(latitude), R * Math.sin(latitude));
      }, 2.5);
    return [side(-1), side(1)] as const;
  };
  const touching = (width: number): Development => developStrip(triangulateStrip(...goreRails(width)));
  /** The angle at the apex between both edges, degrees. */
  const tipOf = ({ left, right }: Development) => {
    const [a, b] = [directionAt(left.at(-1)!, 1), directionAt(right.at(-1)!, 1)];
    return degrees(Math.abs(Math.atan2(cross(a, b), dot(a, b))));
  };

  // Tangent (“slab-sided”) gores, width 2R·tan(π/n): A. F. Payne, Popular Science Monthly vol. 92 prints the rule; n
  // tips make 360°.
  test.each([
    [4, 2],
    [5, 1.4531],
    [6, 1.1547],
    [8, 0.8284],
    [12, 0.5359],
    [16, 0.3978],
    [18, 0.3527],
  ])(
    '%d slab-sided ones are %d R wide, a quarter of the girth long, and lie flat at the apex',
    (n, ratio) => {
      const made = touching(2 * R * Math.tan(Math.PI / n));
      expectNear(distance(pathStart(made.left), pathStart(made.right)), ratio * R, 0.0001 * R);
      expectNear(n * tipOf(made), 360, n * 0.1);
      const middle = distanceUp(made);
      expectNear(
        pathEnd(developMirrored(...goreRails(2 * R * Math.tan(Math.PI / n))).right).y,
        (Math.PI / 2) * R,
        LENGTH,
      );
      expectNear(middle, (Math.PI / 2) * R, LENGTH);
      // The area of a slab-sided gore is width × R, by integrating its cosine.
      expectNear(areaOfPiece(made), 2 * Math.tan(Math.PI / n) * R * R, LENGTH * Math.PI * R);
    },
  );

  // Arc-rule gores, width 2πR/n·cos: their edges are longer than the meridian, and their tips make less than 360°
  // (2·atan(π/n) each).
  test.each([
    [4, 1.1398, 76.3],
    [5, 1.0924, 64.3],
    [6, 1.0654, 55.3],
    [8, 1.0375, 42.9],
  ])('%d with the girth’s own width have edges %d times the meridian and tips of %d°', (n, ratio, tip) => {
    const made = touching((2 * Math.PI * R) / n);
    const meridian = (Math.PI / 2) * R;
    // The figures are kept to four places and to a tenth of a degree.
    expectNear(pathLength(made.left) / meridian, ratio, 6e-5);
    expectNear(pathLength(made.right), pathLength(made.left), 1e-4);
    expectNear(tipOf(made), tip, 0.1);
  });

  // Chord gores: strips between two meridians of the sphere itself. Math Central prints a base of 0.3473 r for 18,
  // and at latitude
  // 2k° a width of cos(2k°) times the base. Their middle is a quarter of an ellipse R by R·cos(π/n) (girth by
  // stdlib’s ellipe).
  test.each([
    [4, Math.SQRT2],
    [6, 1],
    [8, 0.7654],
    [18, 0.3473],
  ])('%d between meridians are %d R wide and as long as an ellipse’s quarter', (n, ratio) => {
    const meridian = (s: number) => (t: number) =>
      polar(R * Math.cos((t * Math.PI) / 2), (s * Math.PI) / n, R * Math.sin((t * Math.PI) / 2));
    const made = developStrip(
      triangulateStrip(sampleCurve(meridian(-1), 2.5), sampleCurve(meridian(1), 2.5)),
    );
    const base = ratio * R;
    expectNear(distance(pathStart(made.left), pathStart(made.right)), base, 0.0001 * R);
    expectNear(distanceUp(made), R * ellipe(Math.sin(Math.PI / n) ** 2), LENGTH);
    const { left, right } = made.flat;
    const count = left.length - 1;
    for (const [i, p] of left.entries()) {
      const latitude = (i / count) * (Math.PI / 2);
      expectNear(distance(p, right[i]!), Math.cos(latitude) * base, 0.0002 * R);
    }
  });
});

/** How far the apex of a gore stands over the ruling at its base, mm. */
const distanceUp = ({ left, right }: Development): number => {
  const [p, q, apex] = [pathStart(left), pathStart(right), pathEnd(left)];
  return (
    Math.abs(cross({ x: q.x - p.x, y: q.y - p.y }, { x: apex.x - p.x, y: apex.y - p.y })) / distance(p, q)
  );
};
