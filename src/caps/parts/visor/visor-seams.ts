import type { EdgeUse, Seam } from '../../../pattern/seam.ts';
import { one, plain } from '../seams/seam.ts';

/** The two covers round their outer edge. */
export const visorEdgeSeam = (): Seam =>
  plain('visorEdge', 'Visor outer edge', 'visorEdge', [one('visor', 'outer')], [one('visor', 'outer', 1)]);

/** The visor's inner edge to the front of the cap, named as in "Visor to band". */
export const visorSeam = (to: string, front: readonly EdgeUse[]): Seam =>
  plain('visorToBand', `Visor to ${to}`, 'lower', [one('visor', 'inner')], front);
