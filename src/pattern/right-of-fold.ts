import { levels } from '../geometry/clip.ts';
import { curveAt, curvePart } from '../geometry/curve.ts';
import { curveLength } from '../geometry/measure.ts';
import { type Curve, isClosed, type Path } from '../geometry/path.ts';
import { type Point, point } from '../geometry/point.ts';
import { ON_FOLD } from '../geometry/tolerance.ts';

/** A stretch of a path on the right-hand side of the line x = 0, and where on the path it begins, mm. */
export interface Run {
  readonly path: Path;
  readonly from: number;
  readonly length: number;
}

/**
 * The stretches of a path with x > 0, in order; ends that lie on the fold have x = 0 exactly. A closed path that
 * starts right of the fold gives one stretch across its start, beginning near its end. What runs along the fold
 * itself belongs to neither side.
 */
export const rightOfFold = (path: Path): Run[] => {
  const runs: { path: Curve[]; from: number; length: number }[] = [];
  let mm = 0;
  let open = false;
  for (const curve of path) {
    const cuts = [0, ...foldParameters(curve), 1];
    for (let i = 1; i < cuts.length; i++) {
      const part = snapped(curvePart(curve, cuts[i - 1]!, cuts[i]!));
      const length = curveLength(part);
      const { x } = curveAt(part, 0.5);
      // A crumb beside the fold is part of neither side, one farther out stays in the chain.
      if (x > 0 && (x > ON_FOLD || length > ON_FOLD)) {
        const run = open ? runs.at(-1)! : { path: [], from: mm, length: 0 };
        if (!open) runs.push(run);
        run.path.push(part);
        run.length += length;
        open = true;
      } else open = false;
      mm += length;
      if (part.to.x === 0) open = false;
    }
  }
  return joinedAcrossStart(path, runs);
};

const joinedAcrossStart = (path: Path, runs: readonly Run[]): Run[] => {
  const [first, last] = [runs[0], runs.at(-1)];
  const meets =
    first && last && first !== last && isClosed(path) && first.path[0]!.from.x > 0 && first.from === 0;
  if (!meets || !(last.path.at(-1)!.to.x > 0)) return [...runs];
  const joined = { path: [...last.path, ...first.path], from: last.from, length: last.length + first.length };
  return [...runs.slice(1, -1), joined];
};

/** An end within ON_FOLD of the fold is put exactly on it. */
const snapped = (curve: Curve): Curve => ({ ...curve, from: snap(curve.from), to: snap(curve.to) });
const snap = (p: Point): Point => (Math.abs(p.x) <= ON_FOLD ? point(0, p.y) : p);

/** The parameters inside a curve where it meets x = 0, ascending. */
const foldParameters = (curve: Curve): number[] =>
  levels(curve, 'x', 0)
    .filter((t) => t > 0 && t < 1)
    .sort((a, b) => a - b);
