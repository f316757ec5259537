import { distance3 } from '../geometry/space.ts';
import type { FlatStrip, Strip } from '../geometry/strip.ts';
import { SAME_POINT } from '../geometry/tolerance.ts';
import type { Side } from '../geometry/triangle-strip.ts';
import { unrollStrip } from '../geometry/unroll-strip.ts';

/**
 * The rails of a strip rolled flat, one point for each of theirs; a rail may stand still and the strip may begin or end in a point.
 * Exact for the triangles between the rulings.
 */
export const flatRails = ({ left, right }: Strip): FlatStrip => {
  const steps: Side[] = [];
  const [lefts, rights] = [[left[0]!], [right[0]!]];
  const places: readonly [number[], number[]] = [[0], [0]];
  for (let i = 1; i < left.length; i++) {
    if (distance3(left[i]!, lefts.at(-1)!) > SAME_POINT) {
      lefts.push(left[i]!);
      steps.push('left');
    }
    if (distance3(right[i]!, rights.at(-1)!) > SAME_POINT) {
      rights.push(right[i]!);
      steps.push('right');
    }
    places[0].push(lefts.length - 1);
    places[1].push(rights.length - 1);
  }
  const flat = unrollStrip({ left: lefts, right: rights, steps });
  return {
    left: places[0].map((k) => flat.left[k]!),
    right: places[1].map((k) => flat.right[k]!),
  };
};
