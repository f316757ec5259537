import type { FormStrip } from '../caps/form.ts';
import type { Point } from '../geometry/point.ts';
import { distance3 } from '../geometry/space.ts';
import type { FlatStrip } from '../geometry/strip.ts';
import { flatRails } from './flat-rails.ts';
import type { Sheet } from './sheet.ts';

/** The longest steps of a net along its rails and along its rulings, mm: they are bent when the cap is put on. */
const [ALONG, ACROSS] = [5, 12];
const MOST_COLUMNS = 16;

/** A strip as a net of rulings, rolled flat beside the piece: where it lies on it is still to be found. */
export const netOf = (one: FormStrip): Sheet => {
  const { left, right } = one.strip;
  const flat = flatRails(one.strip);
  const widest = Math.max(...left.map((p, i) => distance3(p, right[i]!)));
  const columns = 1 + Math.min(MOST_COLUMNS, Math.max(2, Math.ceil(widest / ACROSS)));
  const stops = stopsAlong(one);
  const at = new Float64Array(3 * stops.length * columns);
  const laid = new Float64Array(2 * stops.length * columns);
  stops.forEach(({ from, share }, row) => {
    const to = Math.min(from + 1, left.length - 1);
    const mix = (p: number, q: number) => p + (q - p) * share;
    const [l, m, r, s] = [left[from]!, left[to]!, right[from]!, right[to]!];
    const [fl, fr] = flatEnds(flat, from, to, share);
    for (let j = 0; j < columns; j++) {
      const t = j / (columns - 1);
      const knot = row * columns + j;
      const put = (c: 'x' | 'y' | 'z', k: number) => {
        const p = mix(l[c], m[c]);
        at[3 * knot + k] = p + (mix(r[c], s[c]) - p) * t;
      };
      put('x', 0);
      put('y', 1);
      put('z', 2);
      laid[2 * knot] = fl.x + (fr.x - fl.x) * t;
      laid[2 * knot + 1] = fl.y + (fr.y - fl.y) * t;
    }
  });
  return {
    piece: one.piece,
    copy: one.copy,
    open: one.open ?? false,
    likeness: one.likeness ?? false,
    rows: stops.length,
    columns,
    at,
    flat: laid,
  };
};

interface Stop {
  readonly from: number;
  readonly share: number;
}

/** Every ruling, and more between those that stand far apart. */
const stopsAlong = ({ strip: { left, right } }: FormStrip): readonly Stop[] => {
  const stops: Stop[] = [{ from: 0, share: 0 }];
  for (let i = 1; i < left.length; i++) {
    const step = Math.max(distance3(left[i - 1]!, left[i]!), distance3(right[i - 1]!, right[i]!));
    const count = Math.max(1, Math.ceil(step / ALONG));
    for (let k = 1; k < count; k++) stops.push({ from: i - 1, share: k / count });
    stops.push({ from: i, share: 0 });
  }
  return stops;
};

const flatEnds = (flat: FlatStrip, from: number, to: number, share: number): readonly [Point, Point] => {
  const on = (rail: readonly Point[]): Point => {
    const [p, q] = [rail[from]!, rail[to]!];
    return { x: p.x + (q.x - p.x) * share, y: p.y + (q.y - p.y) * share };
  };
  return [on(flat.left), on(flat.right)];
};
