import type { Placed } from '../drawing/arrange.ts';
import { pathLength, stretch } from '../geometry/measure.ts';
import type { Path } from '../geometry/path.ts';
import type { Point } from '../geometry/point.ts';
import type { Pattern } from '../pattern/pattern.ts';

/** A path, and where its piece lies on the table, mm. */
interface Lying {
  readonly path: Path;
  readonly at: Point;
}

const NOTHING: readonly Lying[] = [];

/**
 * Both sides of a seam as their pieces lie on the table: every edge that takes part in it, or the stretch of it that does. The
 * pieces on the table are those that are cut: where cloth will shrink they are larger than what is sewn.
 */
export const seamOnTable = (
  { pieces, seams }: Pattern,
  cutting: Pattern,
  placed: readonly Placed[],
  id: string | null,
): readonly Lying[] => {
  const seam = id === null ? undefined : seams.find((one) => one.id === id);
  if (!seam) return NOTHING;
  return [...seam.a, ...seam.b].flatMap(({ piece, edge, backwards, from, to }) => {
    const edgeOf = (all: Pattern['pieces']) =>
      all.find((one) => one.id === piece)?.outline.find(({ name }) => name === edge)?.path;
    const [sewn, path] = [edgeOf(pieces), edgeOf(cutting.pieces)];
    const at = placed.find(({ drawing }) => drawing.id === piece)?.at;
    if (!sewn || !path || !at) return [];
    const whole = pathLength(path);
    const growth = whole / pathLength(sewn);
    const [start, end] = [(from ?? 0) * growth, to === undefined ? whole : to * growth];
    return [{ path: backwards ? stretch(path, whole - end, whole - start) : stretch(path, start, end), at }];
  });
};
