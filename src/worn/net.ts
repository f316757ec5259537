import type { FormStrip } from '../caps/form.ts';
import type { Point } from '../geometry/point.ts';
import { distance3, type Point3 } from '../geometry/space.ts';
import type { FlatStrip } from '../geometry/strip.ts';
import { flatRails } from './flat-rails.ts';
import { endKnots, type Sheet } from './sheet.ts';

/** The longest steps of a net along its rails and along its rulings, mm: they are bent when the cap is put on. */
const [ALONG, ACROSS] = [5, 12];
/**
 * The same along the lower edge and along an edge that is a ruling, mm: a chord of 3 mm leaves a curve of 40 mm radius, the
 * front of a small child's head, by 3² / (8 · 40) = 0.03 mm, and is shorter than it by one part in four thousand.
 */
const ALONG_EDGE = 3;
const MOST_COLUMNS = 16;

/** A strip as a net of rulings, rolled flat beside the piece: where it lies on it is still to be found. */
export const netOf = (one: FormStrip): Sheet => {
  const { left, right } = one.strip;
  const flat = flatRails(one.strip);
  const widest = Math.max(...left.map((p, i) => distance3(p, right[i]!)));
  const columns = 1 + Math.min(MOST_COLUMNS, Math.max(2, Math.ceil(widest / ACROSS)));
  const stops = stopsAlong(one);
  const rows = stops.length;
  const finer = [finerOn(one, 0, columns), finerOn(one, left.length - 1, columns)] as const;
  const count = rows * columns + (columns - 1) * (finer[0] + finer[1]);
  const sheet: Sheet = {
    piece: one.piece,
    copy: one.copy,
    open: one.open ?? false,
    likeness: one.likeness ?? false,
    rows,
    columns,
    finer,
    at: new Float64Array(3 * count),
    flat: new Float64Array(2 * count),
  };
  /** Some knots, or a row of them from the one given, at even shares of a ruling. */
  const lay = ({ from, share }: Stop, knots: number | readonly number[], many: number): void => {
    const to = Math.min(from + 1, left.length - 1);
    const mix = (p: number, q: number) => p + (q - p) * share;
    const [l, m, r, s] = [left[from]!, left[to]!, right[from]!, right[to]!];
    const [lx, ly, lz] = [mix(l.x, m.x), mix(l.y, m.y), mix(l.z, m.z)];
    const [rx, ry, rz] = [mix(r.x, s.x), mix(r.y, s.y), mix(r.z, s.z)];
    const [fl, fr] = flatEnds(flat, from, to, share);
    const { at, flat: laid } = sheet;
    for (let j = 0; j < many; j++) {
      const t = j / (many - 1);
      const knot = typeof knots === 'number' ? knots + j : knots[j]!;
      at[3 * knot] = lx + (rx - lx) * t;
      at[3 * knot + 1] = ly + (ry - ly) * t;
      at[3 * knot + 2] = lz + (rz - lz) * t;
      laid[2 * knot] = fl.x + (fr.x - fl.x) * t;
      laid[2 * knot + 1] = fl.y + (fr.y - fl.y) * t;
    }
  };
  for (const [row, stop] of stops.entries()) lay(stop, row * columns, columns);
  for (const end of [0, 1] as const) {
    if (finer[end] === 0) continue;
    const knots = endKnots(sheet, end);
    lay(stops[end * (rows - 1)]!, knots, knots.length);
  }
  return sheet;
};

/** How many knots more between two columns keep the first or the last ruling, which is an edge, near its bend. */
const finerOn = (
  { open, likeness, strip: { left, right } }: FormStrip,
  i: number,
  columns: number,
): number =>
  open || likeness
    ? 0
    : Math.max(0, Math.ceil(distance3(left[i]!, right[i]!) / (columns - 1) / ALONG_EDGE) - 1);

interface Stop {
  readonly from: number;
  readonly share: number;
}

/** Every ruling, and more between those that stand far apart. */
const stopsAlong = ({ strip: { left, right } }: FormStrip): readonly Stop[] => {
  const stops: Stop[] = [{ from: 0, share: 0 }];
  for (let i = 1; i < left.length; i++) {
    const count = Math.max(1, stepsBetween(left[i - 1]!, left[i]!), stepsBetween(right[i - 1]!, right[i]!));
    for (let k = 1; k < count; k++) stops.push({ from: i - 1, share: k / count });
    stops.push({ from: i, share: 0 });
  }
  return stops;
};

const stepsBetween = (p: Point3, q: Point3): number =>
  Math.ceil(distance3(p, q) / (p.z === 0 && q.z === 0 ? ALONG_EDGE : ALONG));

const flatEnds = (flat: FlatStrip, from: number, to: number, share: number): readonly [Point, Point] => {
  const on = (rail: readonly Point[]): Point => {
    const [p, q] = [rail[from]!, rail[to]!];
    return { x: p.x + (q.x - p.x) * share, y: p.y + (q.y - p.y) * share };
  };
  return [on(flat.left), on(flat.right)];
};
