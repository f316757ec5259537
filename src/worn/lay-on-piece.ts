import { flatten } from '../geometry/flatten.ts';
import { pathStart } from '../geometry/path.ts';
import { distance, type Point } from '../geometry/point.ts';
import type { Piece } from '../pattern/piece.ts';
import { joinedFlat } from './joined-flat.ts';
import { laidBy, type Motion, moved, movedBack } from './motion.ts';
import { edgeKnots, flatAt, knotCount, type Sheet } from './sheet.ts';

/** An outline this near (mm) to its chords is near enough to be laid on. */
const CHORDS = 0.05;
/** Places on either outline at which the two are compared. */
const PLACES = 16;
/** Ways of laying that are as good as this (mm) are the same shape turned: then the first is meant. */
const AS_GOOD = 0.15;

/**
 * Lays nets on a piece, copy by copy: they are rolled flat already, and come middle on middle and a corner of theirs on
 * a corner of the outline. A shape that fits in several ways is laid as pieces are drawn: upright, or with its front upwards; turned over
 * only where nothing else fits, or where that copy is cut so.
 * Exact as the nets are; off by no more than the fit of the outline and the nets' chords, some 0.05 mm.
 */
export const layer = (piece: Piece): ((nets: readonly Sheet[]) => readonly Sheet[]) => {
  const ring = piece.outline.flatMap(({ path }) => flatten(path, CHORDS).slice(0, -1));
  const whole = { middle: middleOfRing(ring), joints: piece.outline.map(({ path }) => pathStart(path)) };
  const outline = spread(ring);
  // Copies are alike: what fitted the one before is tried first.
  const fitted = new Map<number, number>();
  return (nets) => {
    const joined = joinedFlat(nets);
    const ways = waysToLay(joined, middleOfNets(joined), whole);
    const rounds = joined.map(outerEdge);
    const edge = spread(rounds.flat());
    const off = (way: Motion, limit: number) => misfit(way, edge, ring, outline, rounds, limit);
    const over = isCutFaceDown(piece, nets[0]!.copy) ? -1 : 1;
    const before = ways[fitted.get(over) ?? -1];
    const best = before && off(before, AS_GOOD) <= AS_GOOD ? before : meantOf(ways, off, over, joined);
    fitted.set(over, ways.indexOf(best));
    return joined.map((net) => laidBy(best, net));
  };
};

const meantOf = (
  ways: readonly Motion[],
  misfitOf: (way: Motion, limit: number) => number,
  over: 1 | -1,
  nets: readonly Sheet[],
): Motion => {
  let least = Infinity;
  const tried = ways.map((way) => {
    const off = misfitOf(way, least + AS_GOOD);
    least = Math.min(least, off);
    return { way, off };
  });
  const good = tried.filter(({ off }) => off <= least + AS_GOOD).map(({ way }) => way);
  const meant = good.some((way) => way.over === over) ? good.filter((way) => way.over === over) : good;
  const upright = uprightness(nets);
  return meant.reduce((most, way) => (upright(way) > upright(most) + 1e-9 ? way : most));
};

/** Copies go round the cap by turns face up and face down, where some are cut so. */
const isCutFaceDown = ({ cuts: [cut] }: Piece, copy: number): boolean =>
  cut?.mirrored !== undefined && copy % 2 === 1;

/** How much what is drawn above stands above: pieces are drawn upright, and what lies level with its front upwards. */
const uprightness = (nets: readonly Sheet[]) => {
  let [mx, my, count] = [0, 0, 0];
  for (const net of nets) {
    for (let k = 0; k < knotCount(net); k++) {
      const [x, y] = [net.flat[2 * k]!, net.flat[2 * k + 1]!];
      const high = net.at[3 * k + 2]! + FRONT * net.at[3 * k + 1]!;
      mx += x * high;
      my += y * high;
      count++;
    }
  }
  const [middleX, middleY, middleHigh] = meansOf(nets, count);
  const [cx, cy] = [mx / count - middleX * middleHigh, my / count - middleY * middleHigh];
  return ({ cos, sin, over }: Motion): number => sin * over * cx + cos * cy;
};

/** The front counts for a little of what height does. */
const FRONT = 0.2;

const meansOf = (nets: readonly Sheet[], count: number): readonly [number, number, number] => {
  let [x, y, high] = [0, 0, 0];
  for (const net of nets) {
    for (let k = 0; k < knotCount(net); k++) {
      x += net.flat[2 * k]!;
      y += net.flat[2 * k + 1]!;
      high += net.at[3 * k + 2]! + FRONT * net.at[3 * k + 1]!;
    }
  }
  return [x / count, y / count, high / count];
};

const outerEdge = (net: Sheet): readonly Point[] => edgeKnots(net).map((knot) => flatAt(net, knot));

/** So many of some points, evenly. */
const spread = (points: readonly Point[]): readonly Point[] =>
  Array.from({ length: PLACES }, (_, i) => points[Math.floor((i * points.length) / PLACES)]!);

const middleOfRing = (ring: readonly Point[]): Point => {
  let [area, x, y] = [0, 0, 0];
  ring.forEach((p, i) => {
    const q = ring[(i + 1) % ring.length]!;
    const cross = p.x * q.y - q.x * p.y;
    area += cross;
    x += (p.x + q.x) * cross;
    y += (p.y + q.y) * cross;
  });
  return { x: x / (3 * area), y: y / (3 * area) };
};

const middleOfNets = (nets: readonly Sheet[]): Point => {
  let [area, x, y] = [0, 0, 0];
  for (const { flat, rows, columns } of nets) {
    const add = (p: number, q: number, r: number): void => {
      const [px, py] = [flat[p]!, flat[p + 1]!];
      const [qx, qy, rx, ry] = [flat[q]!, flat[q + 1]!, flat[r]!, flat[r + 1]!];
      const twice = Math.abs((qx - px) * (ry - py) - (rx - px) * (qy - py));
      area += twice;
      x += ((px + qx + rx) / 3) * twice;
      y += ((py + qy + ry) / 3) * twice;
    };
    // Rulings are straight on the flat: two triangles from rail to rail are all there is between two of them.
    for (let i = 0; i + 1 < rows; i++) {
      const [l, r] = [2 * i * columns, 2 * (i * columns + columns - 1)];
      add(l, r, l + 2 * columns);
      add(r, r + 2 * columns, l + 2 * columns);
    }
  }
  return { x: x / area, y: y / area };
};

/** The corners of a net: the starts of its rails and their ends. */
const cornersOf = (net: Sheet): readonly Point[] =>
  [net.columns - 1, 0, net.rows * net.columns - 1, (net.rows - 1) * net.columns].map((k) => flatAt(net, k));

/** Corners as far from their middles as this part of the distance are taken for the same. */
const AS_FAR = 0.02;

const waysToLay = (
  nets: readonly Sheet[],
  from: Point,
  { middle: to, joints }: { readonly middle: Point; readonly joints: readonly Point[] },
): readonly Motion[] => {
  const corners = nets.flatMap(cornersOf);
  const ways = (isNear: (a: number, b: number) => boolean) =>
    ([1, -1] as const).flatMap((over) =>
      corners.flatMap((p) =>
        joints.flatMap((q): readonly Motion[] => {
          const [a, b] = [distance(p, from), distance(q, to)];
          if (!(a > 1 && b > 1 && isNear(a, b))) return [];
          const turn = Math.atan2(q.y - to.y, q.x - to.x) - Math.atan2(p.y - from.y, over * (p.x - from.x));
          return [{ cos: Math.cos(turn), sin: Math.sin(turn), over, from, to }];
        }),
      ),
    );
  const near = ways((a, b) => Math.abs(a - b) < AS_FAR * b);
  // A likeness may have no corner where its piece has one.
  if (near.length > 0) return near;
  const any = ways(() => true);
  return any.length > 0 ? any : [{ cos: 1, sin: 0, over: 1, from, to }];
};

/** How far the two outlines are apart where they are farthest, at some places of each; Infinity where that is beyond a limit. */
const misfit = (
  way: Motion,
  edge: readonly Point[],
  ring: readonly Point[],
  outline: readonly Point[],
  rounds: readonly (readonly Point[])[],
  limit: number,
): number => {
  let most = 0;
  // Where a copy stands in several strips, the rails between them lie within the piece.
  for (const p of rounds.length > 1 ? [] : edge) {
    most = Math.max(most, toRing(ring, moved(way, p)));
    if (most > limit) return Infinity;
  }
  // A single net of the same area whose edge lies on the outline covers it.
  for (const p of rounds.length > 1 ? outline : []) {
    const there = movedBack(way, p);
    most = Math.max(most, Math.min(...rounds.map((points) => toRing(points, there))));
    if (most > limit) return Infinity;
  }
  return most;
};

const toRing = (ring: readonly Point[], p: Point): number => {
  let least = Infinity;
  let a = ring.at(-1)!;
  for (const b of ring) {
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const [px, py] = [p.x - a.x, p.y - a.y];
    const square = dx * dx + dy * dy;
    const t = square > 0 ? Math.min(1, Math.max(0, (px * dx + py * dy) / square)) : 0;
    const [ex, ey] = [px - t * dx, py - t * dy];
    least = Math.min(least, ex * ex + ey * ey);
    a = b;
  }
  return Math.sqrt(least);
};
