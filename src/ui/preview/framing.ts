import { type Point3, point3 } from '../../geometry/space.ts';
import type { HeadForm } from '../../worn/head-form.ts';
import type { Sheet } from '../../worn/sheet.ts';

/** What is looked at: the middle of the picture in space, and CSS pixels per mm. */
export interface Frame {
  readonly centre: Point3;
  readonly scale: number;
}

/** The size of what is looked at, from any side, mm. */
export interface Extent {
  readonly centre: Point3;
  readonly radius: number;
}

/** Sizes are rounded up to this, so that the picture does not breathe while a slider moves, mm. */
const STEP = 10;

/** A ball about the cap and the head's face. */
export const extentOf = (sheets: readonly Sheet[], head: HeadForm): Extent => {
  const low = [-head.halfBreadth, -head.halfLength, -head.halfLength * 1.05];
  const high = [head.halfBreadth, head.halfLength, head.top];
  for (const { at } of sheets) {
    for (let k = 0; k < at.length; k++) {
      const c = k % 3;
      low[c] = Math.min(low[c]!, at[k]!);
      high[c] = Math.max(high[c]!, at[k]!);
    }
  }
  const middle = (c: number) => (low[c]! + high[c]!) / 2;
  const half = (c: number) => (high[c]! - low[c]!) / 2;
  const radius = Math.max(half(2), half(0), half(1)) * 1.04;
  return { centre: point3(0, middle(1), middle(2)), radius: Math.ceil(radius / STEP) * STEP };
};

const ROOM = 1.08;
export const ZOOMS = { least: 0.7, most: 6 } as const;

export const framed = ({ centre, radius }: Extent, width: number, height: number, zoom: number): Frame => ({
  centre,
  scale: (zoom * Math.min(width, height)) / (2 * radius * ROOM),
});
