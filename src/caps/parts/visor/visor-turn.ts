import { fitPath } from '../../../geometry/fit.ts';
import { curveLength, pathLength, pointAt, tangentAt } from '../../../geometry/measure.ts';
import { type Curve, pathEnd } from '../../../geometry/path.ts';
import { add, dot, left, point, scale } from '../../../geometry/point.ts';
import { wholeEdge } from '../../../geometry/whole-edge.ts';
import type { Figure } from '../../../pattern/piece.ts';
import { exactMm, ratio, thickness, words } from '../../../words.ts';
import type { Head } from '../../style.ts';
import type { VisorShape, VisorWish } from './visor-shape.ts';

/**
 * How much further out the edge of a visor's upper cover stands than that of the under one, mm: it goes round the edge on the outside. A
 * layer that is turned over needs π/2 to π times its thickness more than the one inside it. The least of that gives the 1 to 3 mm of common
 * practice for cloths from denim to melton, and is eased in without tucks in any of them; more would not be.
 */
export const visorTurn = ({ turn }: Pick<Head, 'turn'>): number => (Math.PI / 2) * (turn?.outer ?? 0);

/**
 * The upper cover of a drafted visor: its edge moved out by the whole turn in front, by some 70 % of it at the sides, and by nothing where it
 * runs into the inner edge, which stays.
 */
export const upperWish = (wish: VisorWish, turn: number): VisorWish => ({
  ...wish,
  depth: wish.depth + turn,
  tipRounding: wish.tipRounding + turn / 2,
});

/** Points along half an outer edge, and the turn (radians) between two of its curves that is a corner. */
const STEPS = 96;
const CORNER = 0.3;

/**
 * The same of a cover that is drawn from a bought insert: moved out square to its edge, less towards the tips. What is beyond a corner at a tip
 * stays.
 */
export const movedOut = ({ outer, inner }: VisorShape, turn: number): VisorShape => {
  const right = outer.slice(outer.length / 2);
  const corner = right.findIndex((curve, i) => i + 1 < right.length && turnsAfter(curve, right[i + 1]!));
  const [edge, tip] = corner < 0 ? [right, []] : [right.slice(0, corner + 1), right.slice(corner + 1)];
  const length = pathLength(edge);
  const points = Array.from({ length: STEPS }, (_, i) => {
    const at = (length * i) / STEPS;
    const by = turn * (1 - (i / STEPS) ** 4);
    // The edge runs counter-clockwise: outwards is to its right.
    const out = add(pointAt(edge, at), scale(left(tangentAt(edge, at)), -by));
    return i === 0 ? point(0, out.y) : out;
  });
  const moved = fitPath([...points, pathEnd(edge)], { start: point(1, 0) });
  return { outer: wholeEdge([...moved, ...tip]), inner };
};

const turnsAfter = (curve: Curve, next: Curve): boolean =>
  dot(tangentAt([curve], curveLength(curve)), tangentAt([next], 0)) < Math.cos(CORNER);

export const turnFigures = (turn: number, upper: VisorShape, under: VisorShape): readonly Figure[] => {
  const [above, below] = [pathLength(upper.outer), pathLength(under.outer)];
  return [
    {
      name: 'Outer edge of the upper cover further out by',
      formula: 'π ÷ 2 × thickness of the outer cloth, which it goes round',
      worked: words`1.5708 × ${thickness(turn / (Math.PI / 2))} = ${exactMm(turn)}`,
    },
    {
      name: 'Upper edge eased in',
      formula: 'outer edge of the upper cover ÷ that of the under one − 1',
      worked: words`${exactMm(above)} ÷ ${exactMm(below)} − 1 = ${ratio(above / below - 1)}`,
    },
  ];
};
