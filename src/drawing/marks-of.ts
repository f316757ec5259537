import { contains } from '../geometry/inside.ts';
import { pathLength, pointAt, tangentAt } from '../geometry/measure.ts';
import { type Path, pathEnd, pathStart } from '../geometry/path.ts';
import { add, left, scale } from '../geometry/point.ts';
import { ON_FOLD } from '../geometry/tolerance.ts';
import { allowanceOf } from '../pattern/cut-line.ts';
import type { Allowances } from '../pattern/pattern.ts';
import type { Dimension, Piece, PieceMark } from '../pattern/piece.ts';
import type { Unit } from '../units.ts';
import type { LineMark, Mark, TextMark } from './drawing.ts';
import { dimensionMarks } from './marks/dimension.ts';
import { eyeletMarks } from './marks/eyelet.ts';
import { buttonholeMarks, buttonMarks } from './marks/fastening.ts';
import { notchMarks } from './marks/notch.ts';
import { pleatMarks } from './marks/pleat.ts';
import { stretchMarks } from './marks/stretch.ts';
import { SMALLEST_TEXT } from './roles.ts';

/** The notches of a piece. */
export const notchesOf = (piece: Piece, allowances: Allowances): LineMark[] =>
  piece.notches.flatMap(({ edge: name, at, count }) => {
    const edge = piece.outline.find((e) => e.name === name);
    // A programmer's slip, not a sewist's.
    if (!edge) throw new RangeError(`${piece.id} has no edge "${name}" for its notch`);
    return notchMarks(edge.path, at, count, allowanceOf(edge.kind, allowances));
  });

/** Buttons, buttonholes, pleats, marked stretches and words of a piece. */
export const pieceMarks = ({ marks, outline }: Piece): Mark[] => {
  const stitchLine = outline.flatMap((e) => e.path);
  return marks.flatMap((mark) => marksFor(mark, stitchLine));
};

const marksFor = (mark: PieceMark, stitchLine: Path): Mark[] => {
  switch (mark.kind) {
    case 'button':
      return buttonMarks(mark.at, mark.diameter);
    case 'buttonhole':
      return buttonholeMarks(mark.from, mark.to);
    case 'eyelet':
      return eyeletMarks(mark.at, mark.diameter);
    case 'stretch':
      return stretchMarks(mark.path, mark.name, (p) => contains(stitchLine, p));
    case 'pleat':
      return pleatMarks(mark.fold, mark.place);
    case 'text':
      return [noteMark(mark)];
  }
};

const noteMark = ({ at, text }: { at: TextMark['at']; text: string }): TextMark => ({
  kind: 'text',
  role: 'note',
  at,
  lines: [text],
  size: SMALLEST_TEXT,
  align: 'middle',
  angle: 0,
});

/** A dimension along the fold is drawn clear of the fold's bracket, one along an edge inside it, mm. */
const BESIDE_FOLD = 17;
const BESIDE_EDGE = 5;

/** The dimension lines of a piece, beside the outline where they run along it. */
export const dimensionsOf = (piece: Piece, onFold: boolean, unit: Unit): Mark[] => {
  const stitchLine = piece.outline.flatMap((e) => e.path);
  return piece.dimensions.flatMap((dimension) => {
    const aside = asideOf(dimension, piece, stitchLine, onFold);
    const half = onFold && isHalf(dimension);
    return dimensionMarks(dimension, unit, aside, half);
  });
};

/** How far to the left of its own path a dimension line is drawn, mm. */
const asideOf = ({ along }: Dimension, piece: Piece, stitchLine: Path, onFold: boolean): number => {
  const middle = pathLength(along) / 2;
  const [at, toLeft] = [pointAt(along, middle), left(tangentAt(along, middle))];
  if (onFold && Math.abs(at.x) <= ON_FOLD) return toLeft.x > 0 ? BESIDE_FOLD : -BESIDE_FOLD;
  const onEdge = piece.outline.some((e) => e.path.includes(along[0]!) || sameEnds(e.path, along));
  if (!onEdge) return 0;
  return contains(stitchLine, add(at, scale(toLeft, 0.5))) ? BESIDE_EDGE : -BESIDE_EDGE;
};

const sameEnds = (edge: Path, along: Path): boolean =>
  edge.length === along.length &&
  near(pathStart(edge), pathStart(along)) &&
  near(pathEnd(edge), pathEnd(along));

const near = (p: { x: number; y: number }, q: { x: number; y: number }): boolean =>
  Math.abs(p.x - q.x) <= ON_FOLD && Math.abs(p.y - q.y) <= ON_FOLD;

/** Whether a dimension ends on the fold and its figure is that of the whole. */
const isHalf = ({ along, mm }: Dimension): boolean =>
  mm !== undefined &&
  [pathStart(along), pathEnd(along)].some(({ x }) => x === 0) &&
  mm > 1.5 * pathLength(along);
