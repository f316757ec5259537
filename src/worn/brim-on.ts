import { angleFromBack, type Opening, onOpening, type Round } from './opening.ts';
import type { Sheet } from './sheet.ts';

/**
 * A visor or brim laid on the head's oval by its left rail, the edge that is sewn to the opening; each ruling stays square to
 * it, or as it was. A brim goes round with its own opening. A visor, which is cut for the head's oval, stands apart from a
 * round opening: by its way along from the centre front it finds its place. The oval's girth in mm.
 */
export const openSheetOn = (sheet: Sheet, brim: Opening | null, round: Round, girth: number): Sheet => {
  if (brim === null) {
    return { ...sheet, at: turnedWith(sheet, partsFromFront(sheet, girth), ownRail(sheet), round) };
  }
  const drafted = byPart(brim);
  const parts = partsOn(sheet, brim);
  return { ...sheet, at: turnedWith(sheet, parts, (i) => turnOf(drafted, parts[i]!), round) };
};

/** The part of the opening's girth before the foot of each ruling. */
const partsOn = ({ rows, columns, at }: Sheet, opening: Opening): readonly number[] => {
  const find = onOpening(opening);
  return Array.from({ length: rows }, (_, row) => {
    const k = 3 * row * columns;
    const angle = angleFromBack(at[k]!, at[k + 1]!);
    return row === rows - 1 && angle < 1e-6 ? 1 : find(angle).part;
  });
};

/** The same for an edge that is centred on the front: by its own length either way from there, to the wearer's right and left. */
const partsFromFront = ({ rows, columns, at }: Sheet, girth: number): readonly number[] => {
  const along = [0];
  for (let i = 1; i < rows; i++) {
    const [k, l] = [3 * i * columns, 3 * (i - 1) * columns];
    along.push(along[i - 1]! + Math.hypot(at[k]! - at[l]!, at[k + 1]! - at[l + 1]!));
  }
  const whole = along.at(-1)!;
  const sign = at[0]! < at[3 * (rows - 1) * columns]! ? -1 : 1;
  return along.map((a) => 0.5 + (sign * (a - whole / 2)) / girth);
};

/** The direction of a visor's own edge at each ruling, counter-clockwise round the head; where it stands still, that of its end. */
const ownRail = ({ rows, columns, at }: Sheet) => {
  const foot = (i: number): readonly [number, number] => [at[3 * i * columns]!, at[3 * i * columns + 1]!];
  const sign = at[0]! < at[3 * (rows - 1) * columns]! ? -1 : 1;
  const apart = (i: number, j: number) => Math.hypot(foot(i)[0] - foot(j)[0], foot(i)[1] - foot(j)[1]) > 0.05;
  return (row: number): number => {
    let [a, b] = [row, row];
    while (a > 0 && !apart(a, row)) a--;
    while (b < rows - 1 && !apart(b, row)) b++;
    const [p, q] = [foot(a), foot(b)];
    return Math.atan2(sign * (q[1] - p[1]), sign * (q[0] - p[0]));
  };
};

const NUDGE = 1e-3;

/** The direction of a closed curve at a part of its girth, radians. */
const turnOf = (round: Round, part: number): number => {
  const [a, b] = [round((part - NUDGE + 1) % 1), round((part + NUDGE) % 1)];
  return Math.atan2(b.y - a.y, b.x - a.x);
};

/** Each ruling moved to its part of the oval and turned as the edge turns there. */
const turnedWith = (
  { rows, columns, at }: Sheet,
  parts: readonly number[],
  drafted: (row: number) => number,
  round: Round,
): Float64Array => {
  const moved = Float64Array.from(at);
  for (let i = 0; i < rows; i++) {
    const foot = 3 * i * columns;
    const [x, y] = [at[foot]!, at[foot + 1]!];
    const to = round(parts[i]!);
    const turn = turnOf(round, parts[i]!) - drafted(i);
    const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
    for (let j = 0; j < columns; j++) {
      const k = foot + 3 * j;
      const [dx, dy] = [at[k]! - x, at[k + 1]! - y];
      moved[k] = to.x + cos * dx - sin * dy;
      moved[k + 1] = to.y + sin * dx + cos * dy;
    }
  }
  return moved;
};

const byPart =
  ({ points, girth }: Opening): Round =>
  (part) => {
    const along = part * girth;
    let [low, high] = [0, points.length - 1];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (points[middle]!.along <= along) low = middle;
      else high = middle;
    }
    const [p, q] = [points[low]!, points[high]!];
    const t = (along - p.along) / (q.along - p.along);
    return { x: p.x + (q.x - p.x) * t, y: p.y + (q.y - p.y) * t };
  };
