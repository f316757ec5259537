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

/** Both sides of a seam as their pieces lie on the table: every edge that takes part in it, or the stretch of it that does. */
export const seamOnTable = (
  { pieces, seams }: Pattern,
  placed: readonly Placed[],
  id: string | null,
): readonly Lying[] => {
  const seam = id === null ? undefined : seams.find((one) => one.id === id);
  if (!seam) return NOTHING;
  return [...seam.a, ...seam.b].flatMap(({ piece, edge, backwards, from, to }) => {
    const path = pieces.find((one) => one.id === piece)?.outline.find(({ name }) => name === edge)?.path;
    const at = placed.find(({ drawing }) => drawing.id === piece)?.at;
    if (!path || !at) return [];
    const whole = pathLength(path);
    const [start, end] = [from ?? 0, to ?? whole];
    return [{ path: backwards ? stretch(path, whole - end, whole - start) : stretch(path, start, end), at }];
  });
};
