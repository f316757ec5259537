import { type Point3, point3 } from '../../geometry/space.ts';
import { threeQuarter } from '../../worn/gaze.ts';
import type { HeadForm } from '../../worn/head-form.ts';
import type { Sheet } from '../../worn/sheet.ts';

/** What is looked at: the middle of the picture in space, and CSS pixels per mm. */
export interface Frame {
  readonly centre: Point3;
  readonly scale: number;
}

/** The size of what is looked at, mm: half of it to right and left and half of it up and down, from any side and from above. */
export interface Extent {
  readonly centre: Point3;
  readonly across: number;
  readonly up: number;
}

/** Sizes are rounded up to this, so that the picture does not breathe while a slider moves, mm. */
const STEP = 10;

/** How much of the head's face is in the picture below the tape, in parts of its half length. */
const FACE = 1.05;

/** A drum about the cap and the head's face, as it is best shown and from above. */
export const extentOf = (sheets: readonly Sheet[], head: HeadForm): Extent => {
  const low = [-head.halfBreadth, -head.halfLength, -head.halfLength * FACE];
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
  const round = Math.max(half(0), half(1));
  const { above } = threeQuarter;
  const up = Math.max(round, half(2) * Math.cos(above) + round * Math.sin(above));
  const inSteps = (mm: number) => Math.ceil(mm / STEP) * STEP;
  return { centre: point3(0, middle(1), middle(2)), across: inSteps(round * 1.04), up: inSteps(up) };
};

const ROOM = 1.08;
export const ZOOMS = { least: 0.7, most: 6 } as const;

export const framed = (
  { centre, across, up }: Extent,
  width: number,
  height: number,
  zoom: number,
): Frame => ({
  centre,
  scale: (zoom * Math.min(width / across, height / up)) / (2 * ROOM),
});
