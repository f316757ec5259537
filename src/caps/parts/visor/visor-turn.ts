import { fitPath } from '../../../geometry/fit.ts';
import { pathLength, pointAt, tangentAt } from '../../../geometry/measure.ts';
import { pathEnd } from '../../../geometry/path.ts';
import { add, left, point, scale } from '../../../geometry/point.ts';
import { wholeEdge } from '../../../geometry/whole-edge.ts';
import type { Figure } from '../../../pattern/piece.ts';
import { exactMm, ratio, thickness, words } from '../../../words.ts';
import type { Head } from '../../style.ts';
import type { VisorShape, VisorWish } from './visor-shape.ts';

/**
 * How much further out the edge of a visor's upper cover stands than that of the under one, mm: it goes round the edge on the
 * outside. A layer that is turned over needs between π/2 and π times the thickness of what it goes round; twice the thickness lies between
 * and gives the 1 to 3 mm of common practice for cloths of 0.5 to 1.5 mm.
 */
export const visorTurn = ({ turn }: Pick<Head, 'turn'>): number => 2 * (turn?.outer ?? 0);

/**
 * The upper cover of a drafted visor: its edge moved out by the whole turn in front, by some 70 % of it at the sides, and by nothing where it
 * runs into the inner edge, which stays.
 */
export const upperWish = (wish: VisorWish, turn: number): VisorWish => ({
  ...wish,
  depth: wish.depth + turn,
  tipRounding: wish.tipRounding + turn / 2,
});

/** Points along half an outer edge. */
const STEPS = 96;

/** The same of a cover that is drawn from a bought insert: moved out square to its edge, less towards the tips. */
export const movedOut = ({ outer, inner }: VisorShape, turn: number): VisorShape => {
  const half = pathLength(outer) / 2;
  const points = Array.from({ length: STEPS }, (_, i) => {
    const at = half * (1 + i / STEPS);
    const by = turn * (1 - (i / STEPS) ** 4);
    // The edge runs counter-clockwise: outwards is to its right.
    const out = add(pointAt(outer, at), scale(left(tangentAt(outer, at)), -by));
    return i === 0 ? point(0, out.y) : out;
  });
  return { outer: wholeEdge(fitPath([...points, pathEnd(outer)], { start: point(1, 0) })), inner };
};

export const turnFigures = (turn: number, upper: VisorShape, under: VisorShape): readonly Figure[] => {
  const [above, below] = [pathLength(upper.outer), pathLength(under.outer)];
  return [
    {
      name: 'Outer edge of the upper cover further out by',
      formula: '2 × thickness of the outer cloth, which it goes round',
      worked: words`2 × ${thickness(turn / 2)} = ${exactMm(turn)}`,
    },
    {
      name: 'Upper edge eased in',
      formula: 'outer edge of the upper cover ÷ that of the under one − 1',
      worked: words`${exactMm(above)} ÷ ${exactMm(below)} − 1 = ${ratio(above / below - 1)}`,
    },
  ];
};
