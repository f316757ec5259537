import { boundsOf } from '../geometry/bounds.ts';
import { boxHeight, boxWidth } from '../geometry/box.ts';
import { levels } from '../geometry/clip.ts';
import { curveAt, directionAt } from '../geometry/curve.ts';
import { pointAt } from '../geometry/measure.ts';
import type { Path } from '../geometry/path.ts';
import { dot, type Point, subtract } from '../geometry/point.ts';
import { degrees } from '../units.ts';
import { halved } from './fold.ts';
import type { Piece } from './piece.ts';

/** Where a line square to the box's long side lies on the piece: `at` along that side, each span across from it. mm */
export interface Ordinate {
  readonly at: number;
  readonly spans: readonly (readonly [number, number])[];
}

/** A corner, a notch or a mark: how far to the right and up it lies, from the lower left corner of the box. mm */
export interface NamedPoint {
  readonly name: string;
  readonly right: number;
  readonly up: number;
}

/** A piece as it is drawn with ruler and square: the box that holds its stitch line, and where in it the line runs. mm */
export interface Ordinates {
  /** Whether it is the right half alone, the left side of its box on the fold. */
  readonly half: boolean;
  readonly width: number;
  readonly height: number;
  /** Along which side of the box the ordinates stand: along its foot, measured upwards, or up its left side, measured to the right. */
  readonly along: 'foot' | 'left side';
  /** None for a piece with straight edges alone: its corners tell all. */
  readonly ordinates: readonly Ordinate[];
  readonly points: readonly NamedPoint[];
}

/** An ordinate through a joint of the stitch line, or along an edge at the end of the box, is taken this far beside it, mm. */
const BESIDE = 1e-6;

/** Where the stitch line turns by more than 3° there is a corner. */
const STRAIGHT_ON = Math.cos(degrees(3));

/**
 * How to draw a piece by hand, with an ordinate at every `step` of its longer side that `stepFor` chooses for its length,
 * and at its end. A symmetric piece is given by half.
 */
export const ordinatesOf = (piece: Piece, stepFor: (length: number) => number): Ordinates => {
  const stitch = piece.outline.map(({ path }) => path);
  const drawn = piece.foldable ? halved(piece, stitch).piece : piece;
  const outline = drawn.outline.flatMap(({ path }) => path);
  const box = boundsOf(outline);
  const [width, height] = [boxWidth(box), boxHeight(box)];
  const along = width >= height ? 'foot' : 'left side';
  const straight = outline.every(({ kind }) => kind === 'line');
  const length = Math.max(width, height);
  const stations = straight ? [] : evenly(length, stepFor(length));
  return {
    half: piece.foldable,
    width,
    height,
    along,
    ordinates: stations.map((at) => ({ at, spans: spansAt(outline, box.min, along, at, length) })),
    points: pointsOf(drawn, outline).map(([name, p]) => {
      const { x, y } = subtract(p, box.min);
      return { name, right: x, up: y };
    }),
  };
};

/** 0, step, 2 step … and the length itself, mm. */
const evenly = (length: number, step: number): number[] => {
  const whole = Math.ceil(length / step - 1e-9);
  return [...Array.from({ length: whole }, (_, i) => i * step), length];
};

/** Where a line across the piece lies on it, from edge to edge. */
const spansAt = (
  outline: Path,
  origin: Point,
  along: Ordinates['along'],
  at: number,
  length: number,
): (readonly [number, number])[] => {
  const [axis, across] = along === 'foot' ? (['x', 'y'] as const) : (['y', 'x'] as const);
  const level = origin[axis] + Math.min(at + BESIDE, length - BESIDE);
  const met = outline
    .flatMap((curve) => levels(curve, axis, level).map((t) => curveAt(curve, t)[across] - origin[across]))
    .sort((a, b) => a - b);
  return met.flatMap((from, i) => (i % 2 === 0 && i + 1 < met.length ? [[from, met[i + 1]!] as const] : []));
};

const pointsOf = (drawn: Piece, outline: Path): (readonly [string, Point])[] => {
  const corners = outline.flatMap((curve, i) => {
    const [from, to] = [directionAt(outline.at(i - 1)!, 1), directionAt(curve, 0)];
    return dot(from, to) < STRAIGHT_ON ? [['corner', curve.from] as const] : [];
  });
  const notches = drawn.notches.map(({ edge, at, name }) => {
    const { path } = drawn.outline.find((one) => one.name === edge)!;
    return [`notch, ${name}`, pointAt(path, at)] as const;
  });
  const marks = drawn.marks.flatMap((mark): (readonly [string, Point])[] => {
    if (mark.kind === 'button' || mark.kind === 'eyelet') return [[mark.name, mark.at]];
    return mark.kind === 'buttonhole'
      ? [
          [`${mark.name}, one end`, mark.from],
          [`${mark.name}, other end`, mark.to],
        ]
      : [];
  });
  return [...corners, ...notches, ...marks];
};
