import { type Oval, ovalGirth } from '../../../geometry/oval.ts';
import { SAME_POINT } from '../../../geometry/tolerance.ts';

/**
 * The slope between a crown's rim and the band below it. Under a level rim it is the same height of cloth, at the same
 * lean, all round; under a tilted one it is taller in front than behind.
 */
export interface SideSlope {
  /** The rim, where the tip is sewn. */
  readonly rim: Oval;
  readonly rimGirth: number;
  /** Girth of the level lower edge: the inner parallel of the rim as seen from above, 2π · reach shorter. */
  readonly openingGirth: number;
  /** Along the cloth at the sides, mm. */
  readonly height: number;
  /** How much higher the rim stands at the front than at the back, mm. Less than the rim is long. */
  readonly tilt: number;
  /** The rim as seen from above: itself where it is level, shorter where it is tilted. */
  readonly plan: Oval;
  readonly planGirth: number;
}

/** The centre front or the centre back. */
export type End = 'front' | 'back';

/** The slope between a rim, level or higher in front by a tilt (mm), and a lower edge of some girth. */
export const sideSlope = (rim: Oval, openingGirth: number, height: number, tilt = 0): SideSlope => {
  const rimGirth = ovalGirth(rim);
  if (tilt === 0) return { rim, rimGirth, openingGirth, height, tilt, plan: rim, planGirth: rimGirth };
  const plan = { ...rim, halfLength: Math.sqrt(rim.halfLength ** 2 - (tilt / 2) ** 2) };
  return { rim, rimGirth, openingGirth, height, tilt, plan, planGirth: ovalGirth(plan) };
};

/** How far the rim stands out over the lower edge, level, mm; negative where the crown narrows upwards. */
export const reachOf = ({ planGirth, openingGirth }: SideSlope): number =>
  (planGirth - openingGirth) / (2 * Math.PI);

/** How far the level lower edge lies below the middle of the rim, mm: 0 where the slope lies flat, NaN where the cloth cannot reach. */
export const dropOf = (slope: SideSlope): number => {
  const square = slope.height ** 2 - reachOf(slope) ** 2;
  return Math.abs(square) <= SAME_POINT ? 0 : Math.sqrt(square);
};
