import { SEAM } from '../../../geometry/tolerance.ts';
import type { Notch } from '../../../pattern/piece.ts';

/** Where the lower edge of a copy lies in the ring, in parts of the girth from the centre back; `turned` where it is walked to its start. */
export interface LowerPlace {
  readonly from: number;
  readonly to: number;
  readonly turned?: boolean;
}

interface LowerEdge {
  readonly edge: string;
  /** mm. */
  readonly length: number;
  /** All copies of the piece. */
  readonly places: readonly LowerPlace[];
  /** The piece is its own mirror image, and is to stay so. */
  readonly symmetric: boolean;
  /** Marked already, here or on other edges. */
  readonly notches: readonly Notch[];
}

/**
 * Notches where what is sewn to a lower edge has seams (parts of the girth from the centre back), unless the edge ends or is notched
 * there. Copies are alike: what one of them needs, all have.
 */
export const notchesBelow = (
  seamsBelow: readonly number[],
  { edge, length, places, symmetric, notches }: LowerEdge,
): readonly Notch[] => {
  const found = [0, length, ...notches.filter((notch) => notch.edge === edge).map(({ at }) => at)];
  const needed = seamsBelow.flatMap((part) =>
    places.flatMap(({ from, to, turned = false }) => {
      const along = ((((part - from) % 1) + 1) % 1) / (to - from);
      if (!(along < 1)) return [];
      const at = (turned ? 1 - along : along) * length;
      return symmetric ? [at, length - at] : [at];
    }),
  );
  const marked = needed.filter((at) => {
    const isNew = found.every((other) => Math.abs(other - at) > SEAM);
    if (isNew) found.push(at);
    return isNew;
  });
  return marked.sort((p, q) => p - q).map((at): Notch => ({ edge, at, count: 1, name: 'seam below' }));
};
