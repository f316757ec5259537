import type { Mark, PieceDrawing, TextMark } from '../drawing/drawing.ts';
import { type Box, boxCentre, boxOf, boxUnion } from '../geometry/box.ts';
import type { Curve, Path } from '../geometry/path.ts';
import { add, type Point, point, rotate } from '../geometry/point.ts';
import { translated } from '../geometry/transform.ts';
import { textBox } from './text-box.ts';

/** Quarter turns counter-clockwise. */
export type Turn = 0 | 1 | 2 | 3;

/** A point turned about the origin by quarters: exact. */
export const turnedPoint = ({ x, y }: Point, turn: Turn): Point => {
  if (turn === 0) return point(x, y);
  if (turn === 1) return point(-y, x);
  return turn === 2 ? point(-x, -y) : point(y, -x);
};

export const turnedBox = ({ min, max }: Box, turn: Turn): Box =>
  boxOf([turnedPoint(min, turn), turnedPoint(max, turn)]);

/** A path turned about the origin by quarters: exact. */
const turnedPath = (path: Path, turn: Turn): Path => path.map((curve) => turnedCurve(curve, turn));

const turnedCurve = (curve: Curve, turn: Turn): Curve => {
  const ends = { from: turnedPoint(curve.from, turn), to: turnedPoint(curve.to, turn) };
  if (curve.kind === 'line') return { ...curve, ...ends };
  if (curve.kind === 'arc') return { ...curve, ...ends, centre: turnedPoint(curve.centre, turn) };
  return { ...curve, ...ends, c1: turnedPoint(curve.c1, turn), c2: turnedPoint(curve.c2, turn) };
};

/**
 * A piece turned about the origin by quarters and then moved. Words that would stand on their heads are turned once
 * more where they stand, so that every label reads from the foot or from the right of the sheet.
 */
export const turnedDrawing = (drawing: PieceDrawing, turn: Turn, shift: Point): PieceDrawing => {
  const box = turnedBox(drawing.bounds, turn);
  const turnedToo = (path: Path): Path => translated(turnedPath(path, turn), shift);
  const { label } = drawing;
  return {
    ...drawing,
    ...(label && { label: { ...label, within: turnedToo(label.within) } }),
    marks: labelled(drawing.marks).flatMap((group) => upright(group.map((m) => turnedMark(m, turn, shift)))),
    silhouette: turnedToo(drawing.silhouette),
    bounds: { min: add(box.min, shift), max: add(box.max, shift) },
  };
};

const turnedMark = (mark: Mark, turn: Turn, shift: Point): Mark =>
  mark.kind === 'line'
    ? { ...mark, path: translated(turnedPath(mark.path, turn), shift) }
    : { ...mark, at: add(turnedPoint(mark.at, turn), shift), angle: mark.angle + (turn * Math.PI) / 2 };

/** The marks in their order, texts that follow each other as one label kept together. */
export const labelled = (marks: readonly Mark[]): readonly (readonly Mark[])[] => {
  const groups: Mark[][] = [];
  let previous: Mark | undefined;
  for (const mark of marks) {
    const goesOn =
      previous?.kind === 'text' &&
      mark.kind === 'text' &&
      mark.angle === previous.angle &&
      LABEL.has(mark.role) &&
      LABEL.has(previous.role);
    if (goesOn) groups.at(-1)?.push(mark);
    else groups.push([mark]);
    previous = mark;
  }
  return groups;
};
const LABEL: ReadonlySet<string> = new Set(['title', 'label']);

/** The texts of a label, or none where the group is a line. */
export const textsOf = (group: readonly Mark[]): readonly TextMark[] =>
  group.filter((mark): mark is TextMark => mark.kind === 'text');

const upright = (group: readonly Mark[]): readonly Mark[] => {
  const texts = textsOf(group);
  const first = texts[0];
  // Reads rightwards or upwards already?
  if (first === undefined || Math.cos(first.angle - HAIR) > 0) return group;
  const centre = boxCentre(boxUnion(texts.map(textBox)));
  return texts.map((text) => ({
    ...text,
    at: rotate(text.at, Math.PI, centre),
    angle: text.angle - Math.PI,
  }));
};
/** Keeps a text at a quarter turn upwards from being taken for one that is past it, radians. */
const HAIR = 0.01;
