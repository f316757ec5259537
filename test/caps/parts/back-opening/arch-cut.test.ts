import { describe, expect, it } from 'vitest';
import { archCut } from '../../../../src/caps/parts/back-opening/arch-cut.ts';
import { archBinding } from '../../../../src/caps/parts/back-opening/binding.ts';
import { areaOf } from '../../../../src/geometry/area.ts';
import { pathLength, tangentAt } from '../../../../src/geometry/measure.ts';
import { cubic, line, type Path, pathEnd, pathStart } from '../../../../src/geometry/path.ts';
import { distance, dot, point } from '../../../../src/geometry/point.ts';
import { expectNear } from '../../../geometry/near.ts';

/** A seam down to a corner at the origin and a lower edge from it, as they meet on a gore. */
const straight: Path = [line(point(0, 120), point(0, 0))];
const leaning: Path = [cubic(point(49, 150), point(30, 110), point(0, 70), point(0, 0))];
const lower: Path = [line(point(0, 0), point(98, 0))];

/** Ramanujan's second formula for the perimeter of an ellipse of half axes a and b, good to 1e-6 here (1914). */
const ellipse = (a: number, b: number): number => {
  const h = ((a - b) / (a + b)) ** 2;
  return Math.PI * (a + b) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
};

describe('an arch cut out of a corner', () => {
  it('is a quarter of an ellipse where the seam stands square on the edge', () => {
    for (const [halfWidth, height] of [
      [42.5, 50],
      [30, 75],
      [55, 30],
    ] as const) {
      const { arch } = archCut(straight, lower, { halfWidth, height });
      expectNear(pathLength(arch) / (ellipse(halfWidth, height) / 4), 1, 3e-4);
      const cutOut = areaOf([...arch, line(pathEnd(arch), point(0, 0)), line(point(0, 0), pathStart(arch))]);
      expectNear(Math.abs(cutOut) / ((Math.PI * halfWidth * height) / 4), 1, 5e-4);
    }
  });

  it('takes its height off the seam and half its width off the lower edge, and leaves them in one chain', () => {
    for (const seam of [straight, leaning]) {
      const cut = archCut(seam, lower, { halfWidth: 42.5, height: 50 });
      expectNear(pathLength(seam) - pathLength(cut.seam), 50, 1e-6);
      expectNear(pathLength(lower) - pathLength(cut.lower), 42.5, 1e-9);
      expect(pathStart(cut.seam)).toEqual(pathStart(seam));
      expectNear(distance(pathEnd(cut.seam), pathStart(cut.arch)), 0, 1e-9);
      expectNear(distance(pathEnd(cut.arch), pathStart(cut.lower)), 0, 1e-9);
      expect(pathEnd(cut.lower)).toEqual(pathEnd(lower));
    }
  });

  it('stands square to the lower edge and to the seam, so that two mirrored gores make one smooth arch', () => {
    const { seam, arch } = archCut(leaning, lower, { halfWidth: 42.5, height: 50 });
    const length = pathLength(arch);
    expectNear(dot(tangentAt(arch, length), point(1, 0)), 0, 1e-9);
    expectNear(dot(tangentAt(arch, 0), tangentAt(seam, pathLength(seam))), 0, 1e-9);
  });

  it('is refused where it does not fit', () => {
    expect(() => archCut(straight, lower, { halfWidth: 98, height: 50 })).toThrow(RangeError);
    expect(() => archCut(straight, lower, { halfWidth: 40, height: 120 })).toThrow(RangeError);
    expect(() => archCut(straight, lower, { halfWidth: Number.NaN, height: 50 })).toThrow(RangeError);
  });
});

describe('the binding of an arch', () => {
  it('is as long as both halves of the arch, with the centre back half-way, on the true bias', () => {
    const { outline, notches, grain } = archBinding(70);
    const [bottom] = outline;
    expectNear(pathLength(bottom!.path), 140, 1e-9);
    expect(notches).toEqual([{ edge: 'bottom', at: 70, count: 2, name: 'centre back' }]);
    expectNear(Math.abs(grain[1].y - grain[0].y), Math.abs(grain[1].x - grain[0].x), 1e-9);
  });
});
