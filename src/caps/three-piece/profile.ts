import { line } from '../../geometry/path.ts';
import { point } from '../../geometry/point.ts';
import { bend, fullest, tuckedIn } from '../parts/top-and-sides/profile.ts';
import type { ProfilePart } from '../parts/top-and-sides/top-and-sides-shape.ts';

export interface ProfileWish {
  /** Where the seams meet the front edge, its foremost place, and the back edge, mm to the front. */
  readonly seamFront: number;
  readonly edgeFront: number;
  readonly edgeBack: number;
  /** Of the highest place over the edge, mm. */
  readonly height: number;
  /** How far the top stands out beyond the edge, mm. */
  readonly overhang: number;
  readonly backFullness: number;
}

/** The lip is the foremost place of the overhang: so thick is it where the overhang is nothing, and so much thicker for each mm, mm. */
const LIP = { least: 6, growth: 0.4 };
/** The peak stands at this share of the opening's length from the back. */
const PEAK = 0.42;
/**
 * From the front edge level forward, round the lip, up to the peak and down behind. Convex and smooth; bends are slacker than
 * 4 mm of radius, which the steps follow.
 */
export const capProfile = (wish: ProfileWish): readonly ProfilePart[] => {
  const { seamFront, edgeFront, edgeBack, height, overhang, backFullness } = wish;
  const [start, edge] = [point(seamFront, 0), point(edgeFront, 0)];
  const lip = point(edgeFront + overhang, LIP.least + LIP.growth * overhang);
  const peak = point(edgeBack + (edgeFront - edgeBack) * PEAK, height);
  const back = point(edgeBack, 0);
  const rump = fullest(back, -backFullness, height);
  return [
    { curve: line(start, edge), steps: 14 },
    { curve: bend(edge, 'level', lip, 0.55, 0.55), steps: 20 },
    { curve: bend(lip, 'upright', peak, 0.42, 0.5), steps: 60 },
    { curve: bend(peak, 'level', rump, 0.55, 0.5), steps: 56 },
    { curve: tuckedIn(rump, back), steps: 18 },
  ];
};
