import { pathLength, stretch, tangentAt } from '../../geometry/measure.ts';
import type { Path } from '../../geometry/path.ts';
import { cross, dot } from '../../geometry/point.ts';
import type { Edge, Piece, StitchRow } from '../../pattern/piece.ts';
import type { LineMark } from '../drawing.ts';
import { beside } from './beside.ts';

/** Of the rows along one edge the nearest to it and the farthest: those between would only hide what is written there. */
export const outerRows = (rows: readonly StitchRow[]): readonly StitchRow[] =>
  rows.filter(({ edge, at }) => {
    const all = rows.filter((row) => row.edge === edge).map((row) => row.at);
    return at === Math.min(...all) || at === Math.max(...all);
  });

/** Some rows of stitches of a piece, each from corner to corner. */
export const rowMarks = (
  { outline }: Piece,
  rows: readonly StitchRow[],
  role: LineMark['role'] = 'row',
): LineMark[] =>
  rows.flatMap((row) =>
    outline.flatMap(({ name }, i) =>
      name === row.edge ? [{ kind: 'line' as const, role, path: rowPath(outline, i, row.at, rows) }] : [],
    ),
  );

/** Beside an edge, mm inside it, and shorter where another edge or the row along it comes nearer at a sharp corner. */
const rowPath = (outline: readonly Edge[], i: number, at: number, rows: readonly StitchRow[]): Path => {
  const [edge, before, after] = [0, outline.length - 1, 1].map((n) => outline[(i + n) % outline.length]!);
  const length = pathLength(edge!.path);
  const clear = (corner: readonly [Path, Path], other: Edge): number => {
    const shared = rows.some((row) => row.edge === other.name && row.at === at);
    const back = at / Math.tan(cornerOf(...corner) / (shared ? 2 : 1));
    return at > 0 && back > 0 ? Math.min(back, length / 3) : 0;
  };
  const from = clear([before!.path, edge!.path], before!);
  const to = length - clear([edge!.path, after!.path], after!);
  return beside(from > 0 || to < length ? stretch(edge!.path, from, to) : edge!.path, at);
};

/** The angle inside an outline where one path ends and the next begins, radians. */
const cornerOf = (from: Path, to: Path): number => {
  const [u, v] = [tangentAt(from, pathLength(from)), tangentAt(to, 0)];
  return Math.PI - Math.atan2(cross(u, v), dot(u, v));
};
