import type { WornDrawing, WornRole } from '../../drawing/worn-drawing.ts';
import { boxCentre, boxHeight, boxWidth } from '../../geometry/box.ts';

const roles: readonly WornRole[] = ['head', 'shade', 'edge'];

/** A drawing as one path of SVG for each kind of line, mm, y down; and its middle and size, y up. */
export const drawingData = ({ box, lines }: WornDrawing) => ({
  middle: boxCentre(box),
  width: boxWidth(box),
  height: boxHeight(box),
  paths: roles.map((role) => ({
    role,
    d: lines
      .filter((line) => line.role === role)
      .map(({ points }) => `M${points.map(({ x, y }) => `${x.toFixed(1)} ${(-y).toFixed(1)}`).join('L')}`)
      .join(''),
  })),
});
