import { parallelAngle } from '../../../geometry/oval-parallel.ts';
import { left, type Point, scale, subtract, unit } from '../../../geometry/point.ts';
import { unroll } from '../../../geometry/strip.ts';
import type { Allowances } from '../../../pattern/pattern.ts';
import type { Problem } from '../../../pattern/problem.ts';
import { degrees } from '../../../units.ts';
import { radians, words } from '../../../words.ts';
import { fieldOf } from '../../validate.ts';
import { type BrimSlope, brimStrip } from './brim-slope.ts';
import { type BrimValues, brimParameters } from './parameters.ts';

/** What of a brim off some opening cannot be cut. */
export const brimProblems = (
  { brimPieces }: Pick<BrimValues, 'brimPieces'>,
  slope: BrimSlope,
  allowances: Allowances,
): readonly Problem[] => (brimPieces === 'whole' ? ringTooFull(slope, allowances) : []);

/** Least distance between the cut ends of a ring, mm: room for the shears. */
const GAP = 4;

/** A level ring closes on itself, and has no room for the allowances of its back seam. */
const ringTooFull = (slope: BrimSlope, allowances: Allowances): readonly Problem[] => {
  if (endsApart(slope, allowances) >= GAP) return [];
  let [low, high] = [slope.drop, brimParameters.brimDrop.max];
  while (high - low > degrees(0.01)) {
    const drop = (low + high) / 2;
    if (endsApart({ ...slope, drop }, allowances) >= GAP) high = drop;
    else low = drop;
  }
  const nearest = Math.min(degrees(Math.ceil((high * 180) / Math.PI)), brimParameters.brimDrop.max);
  return [
    {
      field: fieldOf('brimDrop'),
      message: words`So level a ring closes on itself, and its back seam has no allowance. From ${radians(nearest)} down it can be cut whole; or choose sections.`,
      nearest,
    },
  ];
};

/** How far the two cut ends of the ring are apart, mm; negative where they overlap. */
const endsApart = (slope: BrimSlope, { side, lower, brimEdge }: Allowances): number => {
  const flat = unroll(brimStrip(slope, parallelAngle(slope.opening, 1 / 2), parallelAngle(slope.opening, 1)));
  const [inner, outer] = [flat.left.at(-1)!, flat.right.at(-1)!];
  // The strip begins along +x, so the mirror is the line y = 0, and the far end of the half must stay above it.
  const inwards = unit(subtract(inner, outer));
  const aside = scale(left(inwards), -side);
  const height = (p: Point, beyond: number) => p.y + aside.y + inwards.y * beyond;
  return 2 * Math.min(height(inner, lower), height(outer, -brimEdge));
};
