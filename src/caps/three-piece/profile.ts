import { type Cubic, cubic, line } from '../../geometry/path.ts';
import { type Point, point } from '../../geometry/point.ts';
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
/** The back stands out furthest at this share of the height, and higher by this share of how far it stands out. */
const RUMP = { height: 0.3, fullness: 0.3 };

/**
 * From the front edge level forward, round the lip, up to the peak and down behind. Convex and smooth; bends are slacker than
 * 4 mm of radius, which the steps follow.
 */
export const capProfile = (wish: ProfileWish): readonly ProfilePart[] => {
  const { seamFront, edgeFront, edgeBack, height, overhang, backFullness } = wish;
  const [start, edge] = [point(seamFront, 0), point(edgeFront, 0)];
  const lip = point(edgeFront + overhang, LIP.least + LIP.growth * overhang);
  const peak = point(edgeBack + (edgeFront - edgeBack) * PEAK, height);
  const rump = point(edgeBack - backFullness, height * RUMP.height + backFullness * RUMP.fullness);
  const back = point(edgeBack, 0);
  const underBack = point(edgeBack - backFullness * 0.5, rump.y * 0.25);
  return [
    { curve: line(start, edge), steps: 14 },
    { curve: quarter(edge, 'level', lip, 0.55, 0.55), steps: 20 },
    { curve: quarter(lip, 'upright', peak, 0.42, 0.5), steps: 60 },
    { curve: quarter(peak, 'level', rump, 0.55, 0.5), steps: 56 },
    { curve: cubic(rump, point(rump.x, rump.y * 0.45), underBack, back), steps: 18 },
  ];
};

/** A bend that sets out level and arrives upright, or the other way; its handles as shares of the way to the corner. */
const quarter = (from: Point, sets: 'level' | 'upright', to: Point, first: number, last: number): Cubic => {
  const corner = sets === 'level' ? point(to.x, from.y) : point(from.x, to.y);
  const towards = (p: Point, share: number) =>
    point(p.x + (corner.x - p.x) * share, p.y + (corner.y - p.y) * share);
  return cubic(from, towards(from, first), towards(to, last), to);
};
