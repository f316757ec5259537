import type { EdgeUse, Seam } from '../../../pattern/seam.ts';
import { one, plain } from '../seams/seam.ts';
import type { VisorParts } from './visor-parts.ts';

/** The two covers round their outer edge: the upper one, where it is larger, is eased to the under one. */
export const visorEdgeSeam = ({ edgeEase }: VisorParts): Seam => {
  const under = edgeEase === 0 ? one('visor', 'outer', 1) : one('visorUnder', 'outer');
  return {
    ...plain('visorEdge', 'Visor outer edge', 'visorEdge', [one('visor', 'outer')], [under]),
    ease: edgeEase,
  };
};

/** The visor's inner edge to the front of the cap, named as in "Visor to band". */
export const visorSeam = (to: string, front: readonly EdgeUse[]): Seam =>
  plain('visorToBand', `Visor to ${to}`, 'lower', [one('visor', 'inner')], front);
