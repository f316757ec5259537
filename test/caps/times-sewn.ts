import { pathLength } from '../../src/geometry/measure.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';

/** How often an edge of a copy of a piece is sewn to another: 1 for most, less where only a part of it is. */
interface EdgeSewn {
  readonly piece: string;
  readonly copy: number;
  readonly edge: string;
  /** mm. */
  readonly length: number;
  readonly times: number;
}

/** Every edge of every copy that is cut from the first cloth of its piece. */
export const timesSewn = ({ pieces, seams }: Pattern): readonly EdgeSewn[] => {
  const uses = seams.flatMap(({ a, b }) => [...a, ...b]);
  return pieces.flatMap(({ id, cuts, outline }) =>
    Array.from({ length: cuts[0]?.count ?? 0 }, (_, copy) =>
      outline.map(({ name, path }) => {
        const length = pathLength(path);
        const sewn = uses
          .filter((use) => use.piece === id && use.copy === copy && use.edge === name)
          .reduce((sum, { from = 0, to = length }) => sum + to - from, 0);
        return { piece: id, copy, edge: name, length, times: sewn / length };
      }),
    ).flat(),
  );
};
