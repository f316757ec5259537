import { type Line, line, type Path, pathEnd, pathStart } from '../geometry/path.ts';
import { distance, type Point, point } from '../geometry/point.ts';
import { ON_FOLD } from '../geometry/tolerance.ts';
import { mirrored } from '../geometry/transform.ts';
import type { PieceMark } from './piece.ts';
import { rightOfFold } from './right-of-fold.ts';

/** Said of a mark that the unfolded piece has on one side and the half cannot show so. */
const ONE_SIDE = 'one side only';

/**
 * The marks of a symmetric piece that its right-hand half carries. A mark on the left alone is shown on the right as
 * well, and said to be for one side only: a half has no other place for it.
 */
export const marksOnHalf = (marks: readonly PieceMark[]): PieceMark[] =>
  marks.flatMap((mark) => {
    const kept = rightPart(mark);
    if (kept.length > 0) return kept;
    const other = mirrorImage(mark);
    if (marks.some((m) => m !== mark && samePlace(m, other))) return [];
    return [
      other.kind === 'text'
        ? { ...other, text: `${other.text}, ${ONE_SIDE}` }
        : { ...other, name: `${other.name}, ${ONE_SIDE}` },
    ];
  });

const rightPart = (mark: PieceMark): PieceMark[] => {
  if (mark.kind === 'stretch') return rightOfFold(mark.path).map((run) => ({ ...mark, path: run.path }));
  if (mark.kind === 'buttonhole') {
    const runs = rightOfFold([line(mark.from, mark.to)]);
    return runs.map(({ path }) => ({ ...mark, from: pathStart(path), to: pathEnd(path) }));
  }
  if (mark.kind === 'pleat') return middleOf(mark).x >= -ON_FOLD ? [mark] : [];
  return mark.at.x >= -ON_FOLD ? [mark] : [];
};

const mirrorPoint = (p: Point): Point => point(-p.x, p.y);

const mirrorLine = ({ from, to }: Line): Line => line(mirrorPoint(from), mirrorPoint(to));

const mirrorImage = (mark: PieceMark): PieceMark => {
  if (mark.kind === 'stretch') return { ...mark, path: mirrored(mark.path) };
  if (mark.kind === 'buttonhole') return { ...mark, from: mirrorPoint(mark.from), to: mirrorPoint(mark.to) };
  if (mark.kind === 'pleat') return { ...mark, fold: mirrorLine(mark.fold), place: mirrorLine(mark.place) };
  return { ...mark, at: mirrorPoint(mark.at) };
};

const samePlace = (a: PieceMark, b: PieceMark): boolean => {
  const [p, q] = [middleOf(a), middleOf(b)];
  return a.kind === b.kind && distance(p, q) <= ON_FOLD;
};

const middleOf = (mark: PieceMark): Point => {
  if (mark.kind === 'stretch') return chordMiddle(mark.path);
  if (mark.kind === 'buttonhole') return chordMiddle([line(mark.from, mark.to)]);
  if (mark.kind === 'pleat') return chordMiddle([line(mark.fold.from, mark.place.from)]);
  return mark.at;
};

const chordMiddle = (path: Path): Point => {
  const [a, b] = [pathStart(path), pathEnd(path)];
  return point((a.x + b.x) / 2, (a.y + b.y) / 2);
};
