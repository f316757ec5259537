import { fitPath } from '../../../geometry/fit.ts';
import { crossings } from '../../../geometry/intersect.ts';
import { pathLength, reversed } from '../../../geometry/measure.ts';
import { anglesFromFront, type Oval, ovalNormal } from '../../../geometry/oval.ts';
import { arc, line, type Path, pathEnd } from '../../../geometry/path.ts';
import { direction, distance, ORIGIN, point } from '../../../geometry/point.ts';
import { splineThrough } from '../../../geometry/spline.ts';
import { wholeEdge } from '../../../geometry/whole-edge.ts';
import type { InsertFit } from '../../style.ts';
import type { VisorShape } from './visor-shape.ts';

/** What a ruler says of a bought visor insert lying flat, mm. */
export interface InsertMeasures {
  /** Straight across from tip to tip. */
  readonly width: number;
  /** On the centre line. */
  readonly depth: number;
  /** How far the inner edge stands from the ruler at the centre. */
  readonly bow: number;
  /** Front to back at equal steps from the centre towards a tip, the tip itself (nothing) left out; may be empty. */
  readonly widths: readonly number[];
}

/** How full the outer edge is taken to be where no row of widths says: the middle of our own drafted visors. */
const OUTER_POWER = 2.5;
const OUTER_STEPS = 48;

/** The insert, flat, front downwards: its inner edge an arc through tips and bow, its outer edge smooth through the widths. */
export const insertShape = (insert: InsertMeasures): VisorShape => {
  const inner = rightInnerEdge(insert);
  return { outer: wholeEdge(rightOuterEdge(insert, inner)), inner: reversed(wholeEdge(inner)) };
};

/** A bow that no ruler shows: the edge is straight. */
const STRAIGHT = 0.01;

/** Radius of the arc with this chord and bow; Infinity for a straight edge. */
const insertRadius = ({ width, bow }: Pick<InsertMeasures, 'width' | 'bow'>): number =>
  bow < STRAIGHT ? Number.POSITIVE_INFINITY : ((width / 2) ** 2 + bow ** 2) / (2 * bow);

/** Length of the insert's inner edge, mm. */
export const insertInnerEdge = (insert: Pick<InsertMeasures, 'width' | 'bow'>): number => {
  const r = insertRadius(insert);
  return Number.isFinite(r) ? 2 * r * Math.asin(Math.min(1, insert.width / 2 / r)) : insert.width;
};

/** Whether the two edges cross anywhere but at the tips: then the widths and the bow were not read off one insert. */
export const insertCrosses = (insert: InsertMeasures): boolean => {
  const inner = rightInnerEdge(insert);
  const tip = pathEnd(inner);
  return crossings(rightOuterEdge(insert, inner), inner).some(({ point: p }) => distance(p, tip) > AT_TIP);
};

/** Crossings this near to a tip (mm) are the tip itself. */
const AT_TIP = 0.01;

const rightInnerEdge = (insert: InsertMeasures): Path => {
  const r = insertRadius(insert);
  if (!Number.isFinite(r)) return [line(ORIGIN, point(insert.width / 2, 0))];
  const end = point(insert.width / 2, insert.bow);
  return [arc(point(0, r), ORIGIN, Math.asin(Math.min(1, end.x / r)))];
};

const rightOuterEdge = (insert: InsertMeasures, inner: Path): Path => {
  const tip = pathEnd(inner);
  const r = insertRadius(insert);
  const heel = (x: number) => (Number.isFinite(r) ? r - Math.sqrt(Math.max(0, r * r - x * x)) : 0);
  const start = point(1, 0);
  if (insert.widths.length > 0) {
    const step = tip.x / insert.widths.length;
    const stations = insert.widths.map((w, i) => point(i * step, heel(i * step) - w));
    return splineThrough([...stations, tip], start);
  }
  const points = Array.from({ length: OUTER_STEPS + 1 }, (_, i) => {
    const u = Math.sin((i / OUTER_STEPS) * (Math.PI / 2));
    const x = tip.x * u;
    return i === OUTER_STEPS ? tip : point(x, heel(x) - insert.depth * Math.sqrt(1 - u ** OUTER_POWER));
  });
  return fitPath(points, { start });
};

/**
 * How the insert meets the band: its inner edge against the stretch its cover is sewn to, and the slope it will take.
 * A flat edge of curvature k on an oval of curvature κ settles where k = κ · cos(drop); over the whole stretch the
 * curvatures are the mean ones (turning by length).
 */
export const fitInsert = (insert: InsertMeasures, cover: VisorShape, opening: Oval): InsertFit => {
  const innerEdge = insertInnerEdge(insert);
  const stretch = pathLength(cover.inner);
  const [angle] = anglesFromFront(opening, [innerEdge / 2]);
  const headTurning = Math.PI - 2 * direction(ovalNormal(opening, angle!));
  const insertTurning = Number.isFinite(insertRadius(insert)) ? innerEdge / insertRadius(insert) : 0;
  const cosine = insertTurning / headTurning;
  return {
    innerEdge,
    stretch,
    difference: innerEdge - stretch,
    drop: cosine <= 1 ? Math.acos(cosine) : null,
  };
};
