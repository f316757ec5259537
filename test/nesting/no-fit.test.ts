import { describe, expect, it } from 'vitest';
import { noFitOf } from '../../src/nesting/no-fit.ts';
import { penetration, wayOut } from '../../src/nesting/penetration.ts';
import { randomFrom } from '../../src/nesting/random.ts';
import { boxOf, ringOf } from '../../src/nesting/ring.ts';
import { instanceOf } from './instances.ts';
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

  it('are found too where many edges run in line, as of letters and of pieces beside their likes', () => {
    const random = randomFrom(6);
    for (let k = 0; k < 300; k++) {
      const a = letter(random, 20);
      const b = random() < 0.5 ? a : letter(random, 20);
      const quarters = Math.floor(4 * random());
      const [cosine, sine] = [
        [1, 0],
        [0, 1],
        [-1, 0],
        [0, -1],
      ][quarters] as [number, number];
      const noFit = noFitOf(ringOf(a), ringOf(b), cosine, sine);
      for (let n = 0; n < 4; n++) {
        const [x, y] = [240 * (random() - 0.5), 240 * (random() - 0.5)];
        const turned = placed(b, { rotation: (quarters * Math.PI) / 2, x, y });
        const area = common(solidOf(a), solidOf(turned)).getArea();
        const deep = penetration(noFit, x, y);
        if (area > 0.5) expect(deep).toBeGreaterThan(0);
        if (deep > depth) expect(area).toBeGreaterThan(0);
      }
    }
  });

  it('of a notched piece beside its like have no hole', () => {
    // Found in dagli: a library left a gap here where the piece overlaps its like by half.
    const notched = instanceOf('dagli').items[1]!.polygon.map(([x, y]) => ({ x: x * 25, y: y * 25 }));
    const ring = ringOf(notched);
    const overlap = common(solidOf(notched), solidOf(placed(notched, { rotation: 0, x: -72.8, y: 137.8 })));
    expect(overlap.getArea()).toBeGreaterThan(15_000);
    expect(penetration(noFitOf(ring, ring, 1, 0), -72.8, 137.8)).toBeGreaterThan(50);
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
