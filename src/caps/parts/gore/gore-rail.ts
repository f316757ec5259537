import { curveAt } from '../../../geometry/curve.ts';
import type { GoreReach } from './gore-reach.ts';

/** A place on the middle of a gore in space: mm from the axis, and mm above the crown's lower edge. */
export interface GoreStop {
  readonly reach: number;
  readonly height: number;
}

/** Stops in each curve: chords of some 5 mm, which leave the cloth by less than 0.1 mm. */
const STOPS = 32;

/**
 * The middle of a gore, from the lower edge to the middle of the crown. The chords between stops are as long as the
 * way between them on the cloth, so that rulings through them roll out onto the gore's own edge.
 */
export const goreRail = (reach: GoreReach): readonly GoreStop[] => {
  const flat = reach.flatMap((curve, k) => {
    const stops = curve.kind === 'line' ? 1 : STOPS;
    const row = Array.from({ length: stops + 1 }, (_, i) => curveAt(curve, i / stops));
    return k === 0 ? row : row.slice(1);
  });
  let height = 0;
  return flat.map((at, i) => {
    if (i > 0) {
      const [dx, dy] = [at.x - flat[i - 1]!.x, at.y - flat[i - 1]!.y];
      height += Math.sqrt(Math.max(0, (dy - dx) * (dy + dx)));
    }
    return { reach: at.x, height };
  });
};
