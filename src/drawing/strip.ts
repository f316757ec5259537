import { type Path, pathEnd, pathStart } from '../geometry/path.ts';
import { cross, distance, type Point, subtract, unit } from '../geometry/point.ts';
import { ON_FOLD } from '../geometry/tolerance.ts';
import type { Piece } from '../pattern/piece.ts';

/** A strip is at least this much longer than wide. The stubbiest strap is 3 to 1, the longest quarter side band 1 1/2. */
const LONG = 2;

/**
 * Whether a piece is a long straight strip (a band, a strap) that wants a row of its own: two straight edges along the
 * grain, much longer than they are apart. A visor is never one, however shallow; nor is a side band, whose grain runs
 * up: so no slider makes a piece change its row.
 */
export const isStrip = ({ grain: [from, to], outline }: Piece): boolean => {
  if (!(distance(from, to) > 0)) return false;
  const along = unit(subtract(to, from));
  const edges = outline.filter(({ path }) => runsAlong(path, along));
  return edges.some((a) =>
    edges.some((b) => {
      const apart = Math.abs(cross(along, subtract(pathStart(b.path), pathStart(a.path))));
      return apart > ON_FOLD && chordOf(a.path) > LONG * apart && chordOf(b.path) > LONG * apart;
    }),
  );
};

const chordOf = (path: Path): number => distance(pathStart(path), pathEnd(path));

const runsAlong = (path: Path, along: Point): boolean =>
  path.every(({ kind, from, to }) => {
    const way = subtract(to, from);
    return kind === 'line' && Math.abs(cross(along, way)) <= ON_FOLD;
  });
