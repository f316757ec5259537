import { describe, expect, it } from 'vitest';
import { noFitOf } from '../../src/nesting/no-fit.ts';
import { penetration, wayOut } from '../../src/nesting/penetration.ts';
import { randomFrom } from '../../src/nesting/random.ts';
import { boxOf, ringOf } from '../../src/nesting/ring.ts';
import { anyOutline, letter, rectangle, star } from './random-outlines.ts';
import { common, placed, solidOf } from './solid.ts';

const depth = 0.01;

/** Pairs of outlines, the second turned and shifted about the first, and what the independent library says of them. */
const meetings = (count: number, seed: number) => {
  const random = randomFrom(seed);
  return Array.from({ length: count }, () => {
    const [a, b] = [anyOutline(random, 100), anyOutline(random, 100)];
    const turn = 2 * Math.PI * random();
    const box = boxOf(ringOf(a));
    const x = box.x0 - 40 + (box.x1 - box.x0 + 80) * random();
    const y = box.y0 - 40 + (box.y1 - box.y0 + 80) * random();
    const overlapAt = (dx: number, dy: number) =>
      common(solidOf(a), solidOf(placed(b, { rotation: turn, x: dx, y: dy }))).getArea();
    const noFit = noFitOf(ringOf(a), ringOf(b), Math.cos(turn), Math.sin(turn));
    return { noFit, x, y, overlapAt };
  });
};

describe('the places two outlines deny each other', () => {
  it('are those where an independent library finds them overlapping', () => {
    let overlapping = 0;
    for (const { noFit, x, y, overlapAt } of meetings(400, 1)) {
      const deep = penetration(noFit, x, y);
      const area = overlapAt(x, y);
      if (area > 0.05) expect(deep).toBeGreaterThan(0);
      if (deep > depth) expect(area).toBeGreaterThan(0);
      if (deep > 0) overlapping++;
    }
    expect(overlapping).toBeGreaterThan(100);
    expect(overlapping).toBeLessThan(300);
  });

  it('are left by the shortest way, and by no shorter one', () => {
    const random = randomFrom(2);
    for (const { noFit, x, y, overlapAt } of meetings(300, 3)) {
      const deep = penetration(noFit, x, y);
      if (!(deep > depth)) continue;
      const [dx, dy] = [wayOut[0]!, wayOut[1]!];
      expect(Math.hypot(dx, dy)).toBeCloseTo(deep, 9);
      expect(overlapAt(x + dx * (1 + 1e-3 / deep), y + dy * (1 + 1e-3 / deep))).toBeLessThan(1e-6);
      const angle = 2 * Math.PI * random();
      const short = deep - depth / 2;
      expect(overlapAt(x + short * Math.cos(angle), y + short * Math.sin(angle))).toBeGreaterThan(0);
    }
  });

  it('leave the gap of a notch that is only a hair wider', () => {
    const notch = [
      [0, 0],
      [30, 0],
      [30, 20],
      [20, 20],
      [20, 5],
      [10, 5],
      [10, 20],
      [0, 20],
    ].map(([x, y]) => ({ x: x!, y: y! }));
    const peg = rectangle(9.98, 40);
    const noFit = noFitOf(ringOf(notch), ringOf(peg), 1, 0);
    expect(penetration(noFit, 10.01, 5.01)).toBe(0);
    expect(penetration(noFit, 10.03, 5.01)).toBeCloseTo(0.01, 3);
  });

  it('hold a small piece in the middle of a large one, and let it lie in a hollow', () => {
    const large = star(randomFrom(4), 40, 100);
    const dot = rectangle(1, 1);
    expect(penetration(noFitOf(ringOf(large), ringOf(dot), 1, 0), 0, 0)).toBeGreaterThan(10);
    const hollow = letter(() => 0.5, 20);
    const inHollow = { x: 25, y: 70 };
    const area = common(solidOf(hollow), solidOf(placed(dot, { rotation: 0, ...inHollow }))).getArea();
    expect(penetration(noFitOf(ringOf(hollow), ringOf(dot), 1, 0), inHollow.x, inHollow.y) > 0).toBe(
      area > 0,
    );
  });
});
