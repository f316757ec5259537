import { fitEdge } from './fit-edge.ts';
import type { Path } from './path.ts';
import { type Point, left as quarterTurn, subtract, unit } from './point.ts';
import { smoothSteps } from './smooth-steps.ts';
import type { FlatStrip } from './strip.ts';
import { FIT } from './tolerance.ts';
import type { TriangleStrip } from './triangle-strip.ts';
import { unrollStrip } from './unroll-strip.ts';

export interface DevelopmentWish {
  /** Places in each rail, the ends aside, where its edge keeps a sharp corner; ascending. */
  readonly corners?: { readonly left?: readonly number[]; readonly right?: readonly number[] };
  /**
   * Ends whose ruling both edges meet square: where the piece will be mirrored, or where the rulings of its surface
   * do so.
   */
  readonly square?: readonly ('start' | 'end')[];
  /** Largest distance between an edge and its unrolled points, mm; FIT if not given. */
  readonly tolerance?: number;
}

/** A strip rolled flat: both edges from the strip's start to its end, and the points that they were fitted to. */
export interface Development {
  readonly left: Path;
  readonly right: Path;
  readonly flat: FlatStrip;
}

/**
 * The outline of the smooth strip that was sampled, rolled flat (see unrollStrip for how it lies): lines, arcs and
 * cubics, within the tolerance of the unrolled points. On a developable sampled at 4 mm or finer, with bends of 30 mm
 * radius or slacker, that is within 0.02 mm of the true development.
 * A piece that is its own mirror image is developed as one half, square at the mirror, and mirrored (see wholeEdge).
 */
export const developStrip = (
  strip: TriangleStrip,
  { corners = {}, square = [], tolerance = FIT }: DevelopmentWish = {},
): Development => {
  const flat = unrollStrip(strip, smoothSteps(strip));
  const shared = {
    tolerance,
    ...(square.includes('start') ? { start: upFrom(flat.left[0]!, flat.right[0]!) } : {}),
    ...(square.includes('end') ? { end: upFrom(flat.left.at(-1)!, flat.right.at(-1)!) } : {}),
  };
  return {
    left: fitEdge(flat.left, { corners: corners.left ?? [], ...shared }),
    right: fitEdge(flat.right, { corners: corners.right ?? [], ...shared }),
    flat,
  };
};

/** The direction square to a ruling in which its strip runs on. */
const upFrom = (p: Point, q: Point): Point => quarterTurn(unit(subtract(q, p)));
