import { developability } from '../geometry/developability.ts';
import { distance3, type Point3 } from '../geometry/space.ts';
import type { Strip } from '../geometry/strip.ts';
import { SAME_POINT } from '../geometry/tolerance.ts';
import type { Side, TriangleStrip } from '../geometry/triangle-strip.ts';
import type { Form } from './form.ts';

/** How hard the cloth of one piece must be coaxed from flat into the shape it has on the head. */
export interface Coaxing {
  readonly piece: string;
  /** Radians that the surface turns across a millimetre from seam to seam, the mean; 0 where the piece rolls by itself. */
  readonly twistPerMm: number;
  /** By what part the flat piece is larger than the smooth surface between its seams: what has to be shrunk or eased away. */
  readonly surplus: number;
  readonly effort: 'none' | 'fingers' | 'steam';
}

/** Below these surpluses the cloth does it by itself, or under the fingers while it is sewn (our own bounds). */
const EFFORTS = { none: 0.002, fingers: 0.01 };

/** Every shell piece of a form, each once, in the form's order. */
export const coaxingOf = ({ strips }: Form): readonly Coaxing[] => {
  const first = strips.filter(
    ({ piece, likeness }, i) => !likeness && strips.findIndex((s) => s.piece === piece) === i,
  );
  return first.map(({ piece, strip }) => {
    const { twistPerMm, areaRatio } = developability(triangleStripOf(strip));
    const surplus = areaRatio - 1;
    const effort = surplus < EFFORTS.none ? 'none' : surplus < EFFORTS.fingers ? 'fingers' : 'steam';
    return { piece, twistPerMm, surplus, effort };
  });
};

/** A strip with matched rails as triangles: left, right, left, right; a rail that stands still takes no step. */
const triangleStripOf = ({ left, right }: Strip): TriangleStrip => {
  const steps: Side[] = [];
  const rails = { left: [left[0]!], right: [right[0]!] };
  const step = (side: Side, to: Point3) => {
    if (distance3(rails[side].at(-1)!, to) <= SAME_POINT) return;
    rails[side].push(to);
    steps.push(side);
  };
  for (let i = 1; i < left.length; i++) {
    step('left', left[i]!);
    step('right', right[i]!);
  }
  return { ...rails, steps };
};
