import { angleFromBack, type Opening, openingAt, type Round } from './opening.ts';
import type { Sheet } from './sheet.ts';

/** Moves points with the lower edge: towards the axis and away from it, never up or down. */
export const bender = (opening: Opening, round: Round, sheets: readonly Sheet[]) => {
  const { level, height, flatness } = topOf(sheets, opening);
  return (at: Float64Array): Float64Array => {
    const moved = Float64Array.from(at);
    for (let k = 0; k < at.length; k += 3) {
      const [x, y, z] = [at[k]!, at[k + 1]!, at[k + 2]!];
      const reach = Math.hypot(x, y);
      if (!(reach > 1e-9)) continue;
      const { part, reach: edge } = openingAt(opening, angleFromBack(x, y));
      const share = reach / edge;
      const to = round(part);
      const u = Math.min(1, Math.max(0, (z - level) / (height - level)));
      const own = flatness * u * u * (3 - 2 * u);
      moved[k] = share * to.x * (1 - own) + x * own;
      moved[k + 1] = share * to.y * (1 - own) + y * own;
    }
    return moved;
  };
};

/** What is within this of the top (mm) is its flat. */
const FLAT = 3;

/** Where the crown begins over a straight band, how high it is, and how far its flat reaches out: from 0, a dome, to 1, as far as the opening. */
const topOf = (sheets: readonly Sheet[], opening: Opening) => {
  let [height, level] = [0, 0];
  const closed = sheets.filter(({ open, likeness, piece }) => !open && !(likeness && piece === 'topButton'));
  for (const { at } of closed) for (let k = 2; k < at.length; k += 3) height = Math.max(height, at[k]!);
  for (const { piece, at } of closed)
    if (piece === 'band') for (let k = 2; k < at.length; k += 3) level = Math.max(level, at[k]!);
  let flat = 0;
  for (const { at } of closed)
    for (let k = 0; k < at.length; k += 3)
      if (at[k + 2]! > height - FLAT) flat = Math.max(flat, Math.hypot(at[k]!, at[k + 1]!));
  const mean = opening.girth / (2 * Math.PI);
  const flatness = Math.min(1, Math.max(0, (flat / mean - 0.4) / 0.5));
  return { level: height > level ? level : 0, height, flatness };
};
