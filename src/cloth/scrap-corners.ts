import type { Point } from '../geometry/point.ts';
import { point } from '../geometry/point.ts';
import { formatLength, parseLength, type Unit } from '../units.ts';

export type ReadCorners =
  | { readonly ok: true; readonly corners: readonly Point[] }
  | { readonly ok: false; readonly message: string };

/** Corners as they are typed: along and across in the reader's unit, parted by a blank, corner from corner by a semicolon. */
export const writeCorners = (corners: readonly Point[], unit: Unit): string => {
  const one = (mm: number): string => formatLength(mm, unit, { decimals: 1, bare: true }).replace(/\.0$/, '');
  return corners.map(({ x, y }) => `${one(x)} ${one(y)}`).join('; ');
};

const HINT = 'Type each corner as along and across, such as 0 0; 40 0; 40 30; 0 30.';

/** Reads corners back. A ring needs three, and may not cross itself. */
export const readCorners = (text: string, unit: Unit): ReadCorners => {
  const corners: Point[] = [];
  for (const pair of text.split(';').map((part) => part.trim())) {
    if (pair === '') continue;
    const [along, across, ...rest] = pair.split(/\s+/).map((part) => parseLength(part, unit));
    if (!along?.ok || !across?.ok || rest.length > 0) return { ok: false, message: HINT };
    corners.push(point(along.mm, across.mm));
  }
  if (corners.length < 3) return { ok: false, message: `At least three corners. ${HINT}` };
  if (crossesItself(corners))
    return { ok: false, message: 'The outline crosses itself: give the corners in order round it.' };
  return { ok: true, corners };
};

const crossesItself = (ring: readonly Point[]): boolean => {
  const side = (i: number) => [ring[i]!, ring[(i + 1) % ring.length]!] as const;
  for (let i = 0; i < ring.length; i++) {
    for (let j = i + 2; j < ring.length; j++) {
      if (i === 0 && j === ring.length - 1) continue;
      const [[a, b], [c, d]] = [side(i), side(j)];
      if (turn(a, b, c) * turn(a, b, d) <= 0 && turn(c, d, a) * turn(c, d, b) <= 0) return true;
    }
  }
  return false;
};

/** Above nought where r lies left of the way from p to q. */
const turn = (p: Point, q: Point, r: Point): number => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
