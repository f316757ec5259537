import { areaOf } from '../geometry/area.ts';
import { polygon } from '../geometry/path.ts';
import { distance, type Point, point } from '../geometry/point.ts';
import { SAME_POINT } from '../geometry/tolerance.ts';
import { formatLength, parseLength, parseRow, type Unit } from '../units.ts';
import { MOST_CORNERS } from './cloth.ts';

export type ReadCorners =
  | { readonly ok: true; readonly corners: readonly Point[] }
  | { readonly ok: false; readonly message: string };

/** To half a millimetre in cm, and no less finely in inches. */
const DECIMALS: Readonly<Record<Unit, number>> = { cm: 1, in: 2 };

/** Corners as they are typed: along and across in the reader's unit, parted by a blank, corner from corner by a semicolon. */
export const writeCorners = (corners: readonly Point[], unit: Unit): string => {
  const one = (mm: number): string =>
    formatLength(mm, unit, { decimals: DECIMALS[unit], bare: true }).replace(/\.?0+$/, '');
  return corners.map(({ x, y }) => `${one(x)} ${one(y)}`).join('; ');
};

const HINT =
  'Type each corner as along and across, such as 0 0; 40 0; 40 30; 0 30, or a size such as 40 x 30.';
const TWO_WAYS = 'These commas can be read two ways: part corner from corner with semicolons.';

/**
 * Reads corners back, also where a comma joins along and across or no semicolons part the corners; the size of a
 * rectangle, `40 x 30`, stands for its corners. A ring needs three, no more than are kept, and some width, and may not
 * cross itself; a corner given twice in a row, or the first again at the end, is one.
 */
export const readCorners = (text: string, unit: Unit): ReadCorners => {
  const given = cornersIn(text, unit);
  if (typeof given === 'string') return { ok: false, message: given };
  const corners = given.filter((corner, i) => distance(corner, given[(i + 1) % given.length]!) > SAME_POINT);
  if (corners.length < 3) return { ok: false, message: `At least three corners. ${HINT}` };
  if (corners.length > MOST_CORNERS)
    return { ok: false, message: `No more than ${MOST_CORNERS} corners: leave out the least of them.` };
  if (crossesItself(corners))
    return { ok: false, message: 'The outline crosses itself: give the corners in order round it.' };
  if (Math.abs(areaOf(polygon(corners))) < LEAST_AREA)
    return { ok: false, message: 'The corners lie on one line: give those across the scrap too.' };
  return { ok: true, corners };
};

/** Less is no scrap but a slip, mm². */
const LEAST_AREA = 1;

export const rectangle = (x: number, y: number, width: number, height: number): readonly Point[] => [
  point(x, y),
  point(x + width, y),
  point(x + width, y + height),
  point(x, y + height),
];

/** The corners that a text names, or why they cannot be told. */
const cornersIn = (text: string, unit: Unit): readonly Point[] | string => {
  const sides = text.split(/[x×]/i);
  if (sides.length === 2) return ofSize(sides.join(';'), unit) ?? HINT;
  if (text.includes(';'))
    return (
      inPairs(
        text.split(';').filter((part) => part.trim() !== ''),
        unit,
      ) ?? HINT
    );
  const joined = inPairs(text.trim().split(/\s+/), unit);
  const inTurn = figuresInTurn(text, unit);
  // Six figures with a comma each are six corners, or three with decimal commas.
  if (joined !== null && inTurn !== null && inTurn.length >= 3) return TWO_WAYS;
  return joined ?? inTurn ?? HINT;
};

const ofSize = (sides: string, unit: Unit): readonly Point[] | null => {
  const read = parseRow(sides, unit);
  const [width = 0, height = 0, ...rest] = read.ok ? read.mm : [];
  return width > 0 && height > 0 && rest.length === 0 ? rectangle(0, 0, width, height) : null;
};

/** Each text as one corner: `40 30`, `40, 30` or `40,30`. */
const inPairs = (texts: readonly string[], unit: Unit): readonly Point[] | null => {
  const corners = texts.map((text) => {
    const parts = text.trim().split(/,?\s+/);
    const figures = parts.length === 1 ? text.split(',') : parts;
    const [along, across, ...rest] = figures.map((figure) => parseLength(figure, unit));
    return along?.ok && across?.ok && rest.length === 0 ? point(along.mm, across.mm) : null;
  });
  return corners.every((corner) => corner !== null) ? corners : null;
};

/** Along and across by turns, as in `0 0 40 0 40 30 0 30`. */
const figuresInTurn = (text: string, unit: Unit): readonly Point[] | null => {
  const read = parseRow(text, unit);
  if (!read.ok || read.mm.length % 2 > 0) return null;
  const { mm } = read;
  return mm.flatMap((along, i) => (i % 2 > 0 ? [] : [point(along, mm[i + 1]!)]));
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
