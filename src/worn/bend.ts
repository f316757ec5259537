import { angleFromBack, type Opening, openingPart, openingReach, type Round } from './opening.ts';
import type { Sheet } from './sheet.ts';

/**
 * Moves points with the lower edge, towards the axis and away from it, never up or down: all of the way at the foot of the
 * crown, less the higher up, and at the top not at all. There cloth lies level and a move would stretch it; where a side
 * stands upright a move changes hardly any length.
 */
export const bender = (opening: Opening, round: Round, sheets: readonly Sheet[]) => {
  const { level, height } = crownOf(sheets);
  const { reach, x: toX, y: toY } = tableOf(opening, round);
  return (at: Float64Array): Float64Array => {
    const moved = Float64Array.from(at);
    for (let k = 0; k < at.length; k += 3) {
      const x = at[k]!;
      const y = at[k + 1]!;
      const out = Math.sqrt(x * x + y * y);
      if (!(out > 1e-9)) continue;
      const place = (angleFromBack(x, y) / (2 * Math.PI)) * TABLE;
      const i = Math.min(TABLE - 1, Math.floor(place));
      const t = place - i;
      const share = out / (reach[i]! + (reach[i + 1]! - reach[i]!) * t);
      const u = Math.min(1, Math.max(0, (at[k + 2]! - level) / (height - level)));
      const own = u * u * (3 - 2 * u);
      moved[k] = share * (toX[i]! + (toX[i + 1]! - toX[i]!) * t) * (1 - own) + x * own;
      moved[k + 1] = share * (toY[i]! + (toY[i + 1]! - toY[i]!) * t) * (1 - own) + y * own;
    }
    return moved;
  };
};

/** Steps round the axis; between them the opening is taken to be straight, which cuts a polygon's corners by 0.05 mm at most. */
const TABLE = 1440;

/** How far out the opening stands at each step, and where it goes, mm. */
const tableOf = (opening: Opening, round: Round) => {
  const [reach, x, y] = [0, 1, 2].map(() => new Float64Array(TABLE + 1)) as Columns;
  for (let i = 0; i <= TABLE; i++) {
    const angle = (i * 2 * Math.PI) / TABLE;
    const to = round(i === TABLE ? 1 : openingPart(opening, angle));
    reach[i] = openingReach(opening, angle);
    x[i] = to.x;
    y[i] = to.y;
  }
  return { reach, x, y };
};

type Columns = [Float64Array, Float64Array, Float64Array];

/** Where the crown begins over a straight band, and how high it is, mm. */
const crownOf = (sheets: readonly Sheet[]) => {
  let [height, level] = [0, 0];
  const closed = sheets.filter(({ open, likeness, piece }) => !open && !(likeness && piece === 'topButton'));
  for (const { at } of closed) for (let k = 2; k < at.length; k += 3) height = Math.max(height, at[k]!);
  for (const { piece, at } of closed)
    if (piece === 'band') for (let k = 2; k < at.length; k += 3) level = Math.max(level, at[k]!);
  return { level: height > level ? level : 0, height };
};
