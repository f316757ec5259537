import type { Mark, PieceDrawing } from '../../drawing/drawing.ts';
import { boundsOf } from '../../geometry/bounds.ts';
import { type Box, boxHeight, boxOf, boxUnion, boxWidth } from '../../geometry/box.ts';
import { flatten } from '../../geometry/flatten.ts';
import { isWithin } from '../../geometry/inside.ts';
import { type Point, subtract } from '../../geometry/point.ts';
import { PLACING } from '../../geometry/tolerance.ts';
import type { Size } from '../sheet-size.ts';
import { textBox, textCorners } from '../text-box.ts';
import { type Turn, turnedBox, turnedPoint } from '../turned.ts';

/** The paper a piece needs: the inside of its outline, and whatever stands out of it, such as notches. */
export interface Footprint {
  /** Closed: the last point is the first again. */
  readonly outline: readonly Point[];
  /** Chains of points that are drawn besides and are not all inside. */
  readonly chains: readonly (readonly Point[])[];
  readonly box: Box;
}

export const footprintOf = (drawing: PieceDrawing): Footprint => {
  const outline = flatten(drawing.silhouette, PLACING);
  const chains = drawing.marks
    .filter((mark) => mark.kind === 'text' || mark.path !== drawing.silhouette)
    .map(chainOf)
    .filter((chain) => chain.some((p) => !isWithin(outline, p)));
  // Chords fall short of a curve's outermost points: the box is the curve's own.
  const boxes = drawing.marks.map((mark) => (mark.kind === 'line' ? boundsOf(mark.path) : textBox(mark)));
  return { outline, chains, box: boxUnion([boundsOf(drawing.silhouette), ...boxes]) };
};

const chainOf = (mark: Mark): readonly Point[] => {
  if (mark.kind === 'line') return flatten(mark.path, PLACING);
  const corners = textCorners(mark);
  return [...corners, corners[0]!];
};

export const sizeOf = ({ box }: Footprint): Size => ({ width: boxWidth(box), height: boxHeight(box) });

/** A footprint turned by quarters, its box with the lower left corner on the origin. */
export const turnedFootprint = (footprint: Footprint, turn: Turn): Footprint => {
  const corner = turnedBox(footprint.box, turn).min;
  return mapped(footprint, (p) => subtract(turnedPoint(p, turn), corner));
};

/** Every point of a footprint moved by a map. */
export const mapped = (footprint: Footprint, map: (p: Point) => Point): Footprint => ({
  outline: footprint.outline.map(map),
  chains: footprint.chains.map((chain) => chain.map(map)),
  box: boxOf([map(footprint.box.min), map(footprint.box.max)]),
});
