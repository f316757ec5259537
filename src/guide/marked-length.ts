import { pathLength } from '../geometry/measure.ts';
import type { Piece } from '../pattern/piece.ts';

/** The length of a marked stretch, such as a turning gap, mm; null where the piece has none of that name. */
export const markedLength = (piece: Piece | undefined, name: string): number | null => {
  const mark = piece?.marks.find((one) => one.kind === 'stretch' && one.name === name);
  return mark?.kind === 'stretch' ? pathLength(mark.path) : null;
};
