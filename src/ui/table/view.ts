import { type Box, boxCentre, boxHeight, boxWidth } from '../../geometry/box.ts';
import { type Point, point } from '../../geometry/point.ts';

/** Where the table is looked at: the spot (mm, y up) in the middle of the window, and CSS pixels per mm. */
export interface View {
  readonly centre: Point;
  readonly scale: number;
}

/** The window's size, CSS pixels. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

const CLOSEST = 24;
const FARTHEST = 0.05;
/** Room left around the pieces when they are framed: a share of the window, at most so many pixels. */
const ROOM = 0.06;
const MOST_ROOM = 40;

const within = (scale: number): number => Math.min(Math.max(scale, FARTHEST), CLOSEST);

/** The view that frames a box, `foot` pixels at the lower edge kept free for what stands there. */
export const fitted = (box: Box, size: Size, foot = 0): View => {
  const room = (across: number): number => Math.min(across * ROOM, MOST_ROOM);
  const [w, h] = [size.width - 2 * room(size.width), size.height - foot - 2 * room(size.height)];
  const [bw, bh] = [boxWidth(box), boxHeight(box)];
  // Is there nothing to frame, or no window yet?
  if (!(bw >= 0 && bh >= 0 && w > 0 && h > 0)) return { centre: point(0, 0), scale: 1 };
  const scale = within(Math.min(w / Math.max(bw, 1), h / Math.max(bh, 1)));
  const { x, y } = boxCentre(box);
  return { centre: point(x, y - foot / 2 / scale), scale };
};

/** The spot on the table under a pixel of the window. */
export const toTable = ({ centre, scale }: View, size: Size, px: Point): Point =>
  point(centre.x + (px.x - size.width / 2) / scale, centre.y - (px.y - size.height / 2) / scale);

/** The pixel of the window over a spot on the table. */
export const toWindow = ({ centre, scale }: View, size: Size, mm: Point): Point =>
  point(size.width / 2 + (mm.x - centre.x) * scale, size.height / 2 - (mm.y - centre.y) * scale);

/** Closer (factor above 1) or farther, with the spot under a pixel staying under it. */
export const zoomed = (view: View, size: Size, factor: number, at: Point): View => {
  const scale = within(view.scale * factor);
  const spot = toTable(view, size, at);
  const keep = view.scale / scale;
  return {
    scale,
    centre: point(spot.x + (view.centre.x - spot.x) * keep, spot.y + (view.centre.y - spot.y) * keep),
  };
};

/** The table pulled along by so many pixels, right and down. */
export const pulled = (view: View, right: number, down: number): View => ({
  ...view,
  centre: point(view.centre.x - right / view.scale, view.centre.y + down / view.scale),
});

/** The view moved so that its middle is over the pieces: they can be pushed aside but not lost. */
export const kept = (view: View, box: Box): View => {
  // Nothing on the table? Then nothing can be lost.
  if (!(box.min.x <= box.max.x)) return view;
  const clamp = (n: number, from: number, to: number): number => Math.min(Math.max(n, from), to);
  return {
    ...view,
    centre: point(clamp(view.centre.x, box.min.x, box.max.x), clamp(view.centre.y, box.min.y, box.max.y)),
  };
};

/** Whether all of a box can be seen. */
export const seesAll = (view: View, size: Size, box: Box): boolean => {
  const [a, b] = [toWindow(view, size, box.min), toWindow(view, size, box.max)];
  return a.x >= 0 && b.x <= size.width && b.y >= 0 && a.y <= size.height;
};
