import { angleFromBack, type Opening, onOpening, type Round } from './opening.ts';
import type { Sheet } from './sheet.ts';

/**
 * Moves points with the lower edge, towards the axis and away from it, never up or down: all of the way at the foot of the
 * crown, less the higher up, and at the top not at all. There cloth lies level and a move would stretch it; where a side
 * stands upright a move changes hardly any length. What is on the opening goes to its place on the oval exactly.
 */
export const bender = (opening: Opening, round: Round, { level, height }: Crown) => {
  const find = onOpening(opening);
  return (at: Float64Array): Float64Array => {
    const moved = Float64Array.from(at);
    for (let k = 0; k < at.length; k += 3) {
      const x = at[k]!;
      const y = at[k + 1]!;
      if (!(x * x + y * y > 1e-18)) continue;
      const { part, reach } = find(angleFromBack(x, y));
      const share = Math.sqrt(x * x + y * y) / reach;
      const to = round(part);
      const u = Math.min(1, Math.max(0, (at[k + 2]! - level) / (height - level)));
      const own = u * u * (3 - 2 * u);
      moved[k] = share * to.x * (1 - own) + x * own;
      moved[k + 1] = share * to.y * (1 - own) + y * own;
    }
    return moved;
  };
};

/** Where a crown begins over a straight band, and how high it is, mm. */
export interface Crown {
  readonly level: number;
  readonly height: number;
}

export const crownOf = (sheets: readonly Sheet[]): Crown => {
  let [height, level] = [0, 0];
  const closed = sheets.filter(({ open, likeness, piece }) => !open && !(likeness && piece === 'topButton'));
  for (const { at } of closed) for (let k = 2; k < at.length; k += 3) height = Math.max(height, at[k]!);
  for (const { piece, at } of closed)
    if (piece === 'band') for (let k = 2; k < at.length; k += 3) level = Math.max(level, at[k]!);
  return { level: height > level ? level : 0, height };
};
