import { type Oval, ovalArc, ovalPoint } from '../geometry/oval.ts';
import { distance, norm, type Point } from '../geometry/point.ts';
import type { Point3 } from '../geometry/space.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { EdgeUse } from '../pattern/seam.ts';
import { seamLine } from './seam-line.ts';
import { endKnots, knotAt, type Sheet } from './sheet.ts';

/** The level lower edge of a cap as it is drafted: round the axis from the centre back, counter-clockwise seen from above. */
export interface Opening {
  /** Ascending by the angle from the centre back, 0 to 2π; the first again at the end. */
  readonly points: readonly (Point & { readonly angle: number; readonly along: number })[];
  readonly girth: number;
}

/** What stands this near to height 0 is on the lower edge, mm. */
const LEVEL = 1e-3;
/** An opening in the edge, such as a back arch: wider than this (radians) it is bridged by points between. */
const GAP = 0.25;

/** Radians counter-clockwise from the centre back, 0 to 2π. */
export const angleFromBack = (x: number, y: number): number => {
  const angle = Math.atan2(y, x) + Math.PI / 2;
  return angle < 0 ? angle + 2 * Math.PI : angle;
};

/** The lower edge of the crown or its band, or of the lining, where it stands on level 0; null where nothing of them does. */
export const openingOf = (sheets: readonly Sheet[], { pieces, seams }: Pattern): Opening | null => {
  const edges = ['lowerEdge', 'liningEdge'].flatMap((id) =>
    seams.filter((seam) => seam.id === id).flatMap(({ a, b }) => [a, b]),
  );
  const isHere = (use: EdgeUse) => sheets.some(({ piece, copy }) => piece === use.piece && copy === use.copy);
  const edge = edges.find((chain) => chain.some(isHere)) ?? [];
  const places = edge.flatMap((use) => {
    const own = sheets.filter(({ piece, copy }) => piece === use.piece && copy === use.copy);
    // Of a piece in several nets, a rail between them may lie level too.
    return own.length === 1 ? levelSides(own[0]!) : (seamLine(own, pieces, [use])?.points ?? []);
  });
  return openingThrough(
    places.filter(({ z }) => Math.abs(z) < LEVEL).map(({ x, y }) => ({ x, y, angle: angleFromBack(x, y) })),
  );
};

/** Rails and end rulings that stand on level 0 from end to end. */
const levelSides = (sheet: Sheet): readonly Point3[] => {
  const { rows, columns } = sheet;
  const rail = (column: number) => Array.from({ length: rows }, (_, row) => row * columns + column);
  return [endKnots(sheet, 0), rail(columns - 1), endKnots(sheet, 1), rail(0)]
    .map((side) => side.map((knot) => knotAt(sheet, knot)))
    .filter((side) => side.every(({ z }) => Math.abs(z) < LEVEL))
    .flat();
};

/** A visor or a brim: its left rail, on level 0, is sewn to the opening. */
export const isOnOpening = ({ open, rows, columns, at }: Sheet): boolean =>
  open &&
  Array.from({ length: rows }, (_, row) => at[3 * row * columns + 2]!).every((z) => Math.abs(z) < LEVEL);

/** The edge of a brim that goes all the way round, where it is sewn to the crown; null for a visor and where there is none. */
export const brimOpeningOf = (sheets: readonly Sheet[]): Opening | null => {
  const brim = sheets.filter(isOnOpening);
  const rail = brim.flatMap((sheet) =>
    Array.from({ length: sheet.rows }, (_, row) => placeOf(sheet, row * sheet.columns)),
  );
  return goesAllRound(rail) ? openingThrough(rail) : null;
};

/** A visor leaves the back open, even one that reaches past the sides: more than a quarter of the way round. */
const goesAllRound = (places: readonly Turned[]): boolean => {
  const angles = places.map(({ angle }) => angle).sort((a, b) => a - b);
  const gaps = angles.map((angle, i) => angle - (angles[i - 1] ?? angles.at(-1)! - 2 * Math.PI));
  return Math.max(...gaps) < Math.PI / 2;
};

const placeOf = ({ at }: Sheet, knot: number) => {
  const [x, y, z] = [at[3 * knot]!, at[3 * knot + 1]!, at[3 * knot + 2]!];
  return { x, y, z, angle: angleFromBack(x, y) };
};

const openingThrough = (places: readonly Turned[]): Opening | null => {
  const found = [...places]
    .sort((p, q) => p.angle - q.angle)
    .filter((p, i, all) => i === 0 || p.angle - all[i - 1]!.angle > 1e-7);
  if (found.length < 8) return null;
  const [first, last] = [found[0]!, found.at(-1)!];
  const ring = [
    { ...last, angle: last.angle - 2 * Math.PI },
    ...found,
    { ...first, angle: first.angle + 2 * Math.PI },
  ];
  const bridged = ring.flatMap((p, i) => {
    const q = ring[i + 1];
    if (!q || q.angle - p.angle <= GAP) return [p];
    const count = Math.ceil((q.angle - p.angle) / GAP);
    return [p, ...Array.from({ length: count - 1 }, (_, k) => onCurve(p, q, (k + 1) / count))];
  });
  return measured(bridged);
};

type Turned = Point & { readonly angle: number };

const onCurve = (p: Turned, q: Turned, t: number): Turned => {
  const [a, b] = [norm(p), norm(q)];
  const [angle, r] = [p.angle + (q.angle - p.angle) * t, a + (b - a) * t];
  return { angle, x: r * Math.sin(angle), y: -r * Math.cos(angle) };
};

/** Starts and ends exactly at the centre back, with the way along. */
const measured = (ring: readonly Turned[]): Opening => {
  const next = Math.max(
    1,
    ring.findIndex(({ angle }) => angle >= 0),
  );
  const [p, q] = [ring[next - 1]!, ring[next]!];
  const t = shareAt(p, q, 0);
  const back = { x: p.x + (q.x - p.x) * t, y: p.y + (q.y - p.y) * t };
  const inner = ring.filter(({ angle }) => angle > 1e-7 && angle < 2 * Math.PI - 1e-7);
  const round = [{ ...back, angle: 0 }, ...inner, { ...back, angle: 2 * Math.PI }];
  let along = 0;
  const points = round.map((point, i) => {
    if (i > 0) along += distance(point, round[i - 1]!);
    return { ...point, along };
  });
  return { points, girth: along };
};

/** The share of a chord at which the line out of the axis at an angle crosses it. */
const shareAt = (p: Point, q: Point, angle: number): number => {
  const [ux, uy] = [Math.sin(angle), -Math.cos(angle)];
  const cross = (q.x - p.x) * uy - (q.y - p.y) * ux;
  return Math.abs(cross) > 1e-12 ? Math.min(1, Math.max(0, (uy * -p.x + ux * p.y) / cross)) : 0;
};

/** Broader than this by its length, an opening is drawn round (or as a polygon), and the head makes it oval. */
const ROUND = 0.96;

export const isDrawnRound = ({ points }: Opening): boolean => {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return (Math.max(...xs) - Math.min(...xs)) / (Math.max(...ys) - Math.min(...ys)) > ROUND;
};

/** Sectors about the axis, for finding a chord of the opening at once. */
const SECTORS = 720;

/** Looks up, at an angle from the centre back, the part of the opening's girth before it and how far out (mm) the opening stands there. */
export const onOpening = ({ points, girth }: Opening) => {
  const sector = SECTORS / (2 * Math.PI);
  const first = new Int32Array(SECTORS + 1);
  for (let s = 0, i = 0; s <= SECTORS; s++) {
    while (i + 2 < points.length && points[i + 1]!.angle <= s / sector) i++;
    first[s] = i;
  }
  return (angle: number): { readonly part: number; readonly reach: number } => {
    let i = first[Math.min(SECTORS, Math.max(0, Math.floor(angle * sector)))]!;
    while (i + 2 < points.length && points[i + 1]!.angle <= angle) i++;
    const [p, q] = [points[i]!, points[i + 1]!];
    const t = shareAt(p, q, angle);
    const [x, y] = [p.x + (q.x - p.x) * t, p.y + (q.y - p.y) * t];
    return { part: (p.along + (q.along - p.along) * t) / girth, reach: Math.sqrt(x * x + y * y) };
  };
};

/** A closed oval looked up by the part of its girth from the centre back. */
export type Round = (part: number) => Point;

const ROUND_STEPS = 720;

/** The points of an oval at equal steps of its girth; between them straight: off by less than 0.001 mm at a head's size. */
export const ovalByPart = (oval: Oval): Round => {
  const girth = ovalArc(oval, 0, 2 * Math.PI);
  const table: Point[] = [];
  const fine = 4 * ROUND_STEPS;
  let [reached, next] = [0, 0];
  let before = ovalPoint(oval, -Math.PI / 2);
  let length = 0;
  for (let i = 1; i <= fine; i++) {
    const now = ovalPoint(oval, -Math.PI / 2 + (i * 2 * Math.PI) / fine);
    length = distance(now, before);
    while (next < ROUND_STEPS && (next * girth) / ROUND_STEPS <= reached + length + 1e-9) {
      const t = length > 0 ? ((next * girth) / ROUND_STEPS - reached) / length : 0;
      table.push({ x: before.x + (now.x - before.x) * t, y: before.y + (now.y - before.y) * t });
      next++;
    }
    reached += length;
    before = now;
  }
  table.push(table[0]!);
  return (part) => {
    const at = Math.min(Math.max(part, 0), 1) * ROUND_STEPS;
    const i = Math.min(Math.floor(at), ROUND_STEPS - 1);
    const [p, q] = [table[i]!, table[i + 1]!];
    return { x: p.x + (q.x - p.x) * (at - i), y: p.y + (q.y - p.y) * (at - i) };
  };
};
