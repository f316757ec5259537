import { describe, expect, test } from 'vitest';
import { distance3, type Point3 } from '../../src/geometry/space.ts';
import { leant } from '../../src/worn/leant.ts';
import { knotAt, knotCount, type Sheet } from '../../src/worn/sheet.ts';
import { HEADS } from '../caps/family.ts';
import { assembled, styles } from './worn-caps.ts';

const knotsOf = (sheets: readonly Sheet[]): readonly Point3[] =>
  sheets.flatMap((sheet) => Array.from({ length: knotCount(sheet) }, (_, knot) => knotAt(sheet, knot)));

describe('a cap leant to one side', () => {
  const { sheets } = assembled(styles.find(({ id }) => id === 'flat-top')!, {}, HEADS[4]!);
  const [upright, tilted] = [knotsOf(sheets), knotsOf(leant(sheets))];
  /** The knot that stands out furthest. */
  const outmost = (reach: (p: Point3) => number): number =>
    upright.reduce((best, p, k) => (reach(p) > reach(upright[best]!) ? k : best), 0);
  const rise = (k: number): number => tilted[k]!.z - upright[k]!.z;

  test('keeps its shape: any two places of it stay as far from each other', () => {
    for (let k = 0; k < upright.length; k += 7) {
      for (const other of [0, upright.length >> 1, upright.length - 1]) {
        const [before, after] = [upright, tilted].map((knots) => distance3(knots[k]!, knots[other]!));
        expect(Math.abs(after! - before!)).toBeLessThan(1e-9);
      }
    }
  });

  test('is no mirror image of itself', () => {
    const [o, ...axes] = [
      { x: 0, y: 0, z: 0 },
      { x: 1, y: 0, z: 0 },
      { x: 0, y: 1, z: 0 },
      { x: 0, y: 0, z: 1 },
    ];
    const frame = { ...sheets[0]!, rows: 2, columns: 2, finer: [0, 0] as const };
    const at = Float64Array.from([o!, ...axes].flatMap(({ x, y, z }) => [x, y, z]));
    const [a, b, c] = knotsOf(leant([{ ...frame, at }])).slice(1) as [Point3, Point3, Point3];
    const volume =
      a.x * (b.y * c.z - b.z * c.y) - a.y * (b.x * c.z - b.z * c.x) + a.z * (b.x * c.y - b.y * c.x);
    expect(volume).toBeCloseTo(1, 12);
  });

  test('goes down at the wearer’s right and in front, and up at the left and behind', () => {
    expect(rise(outmost(({ x }) => x))).toBeLessThan(-5);
    expect(rise(outmost(({ x }) => -x))).toBeGreaterThan(5);
    expect(rise(outmost(({ y }) => y))).toBeLessThan(-2);
    expect(rise(outmost(({ y }) => -y))).toBeGreaterThan(2);
  });
});
