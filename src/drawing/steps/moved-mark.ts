import type { Path } from '../../geometry/path.ts';
import { add, type Point } from '../../geometry/point.ts';
import { translated } from '../../geometry/transform.ts';
import type { LineMark, Mark } from '../drawing.ts';

/** Marks carried along by a vector, mm. */
export const movedMarks = (marks: readonly Mark[], by: Point): readonly Mark[] =>
  marks.map((mark) =>
    mark.kind === 'line' ? { ...mark, path: translated(mark.path, by) } : { ...mark, at: add(mark.at, by) },
  );

export const lineMark = (role: LineMark['role'], path: Path, rest: Partial<LineMark> = {}): LineMark => ({
  kind: 'line',
  role,
  path,
  ...rest,
});
