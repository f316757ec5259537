import { flatten } from '../geometry/flatten.ts';
import { pathStart } from '../geometry/path.ts';
import { distance, type Point } from '../geometry/point.ts';
import { between3, distance3, dot3, subtract3 } from '../geometry/space.ts';
import type { Piece } from '../pattern/piece.ts';
import { edgeKnots, knotAt, knotCount, type Sheet } from './sheet.ts';

/** How the plane is moved: turned by an angle (cosine and sine), turned over before that or not, and shifted. */
interface Motion {
  readonly cos: number;
  readonly sin: number;
  readonly over: 1 | -1;
  readonly from: Point;
  readonly to: Point;
}

const moved = ({ cos, sin, over, from, to }: Motion, p: Point): Point => {
  const [x, y] = [over * (p.x - from.x), p.y - from.y];
  return { x: to.x + cos * x - sin * y, y: to.y + sin * x + cos * y };
};

/** An outline this near (mm) to its chords is near enough to be laid on. */
const CHORDS = 0.05;
/** Places on either outline at which the two are compared. */
const PLACES = 16;
/** Ways of laying that are as good as this (mm) are the same shape turned: then the first is meant. */
const AS_GOOD = 0.15;

/**
 * Lays the nets of the copies of a piece on it: those of one copy, which are rolled flat already, on their piece: middles together, a corner of the nets on a corner
 * of the outline. A shape that fits in several ways is laid as pieces are drawn: upright, or with its front upwards; turned over
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

const isCutFaceDown = ({ cuts }: Piece, copy: number): boolean => {
  const [cut] = cuts;
  return cut?.mirrored !== undefined && copy >= cut.count - cut.mirrored;
};

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

const flatAt = ({ flat }: Sheet, knot: number): Point => ({ x: flat[2 * knot]!, y: flat[2 * knot + 1]! });

const laidBy = ({ cos, sin, over, from, to }: Motion, net: Sheet): Sheet => {
  const flat = new Float64Array(net.flat.length);
  for (let k = 0; k < flat.length; k += 2) {
    const [x, y] = [over * (net.flat[k]! - from.x), net.flat[k + 1]! - from.y];
    flat[k] = to.x + cos * x - sin * y;
    flat[k + 1] = to.y + sin * x + cos * y;
  }
  return { ...net, flat };
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

const movedBack = ({ cos, sin, over, from, to }: Motion, p: Point): Point => {
  const [x, y] = [p.x - to.x, p.y - to.y];
  return { x: from.x + over * (cos * x + sin * y), y: from.y + cos * y - sin * x };
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

/** Knots nearer than this (mm) in space are one. */
const ONE = 0.02;

/**
 * The nets of one copy beside each other on the flat: each that shares a rail or a part of one with those before is moved so that
 * the two lie on each other.
 */
const joinedFlat = (nets: readonly Sheet[]): readonly Sheet[] => {
  const done = [nets[0]!];
  const waiting = nets.slice(1);
  while (waiting.length > 0) {
    const next = waiting.findIndex((net) => sharedPlaces(done, net) !== null);
    const net = waiting.splice(Math.max(next, 0), 1)[0]!;
    const shared = next < 0 ? null : sharedPlaces(done, net);
    done.push(shared === null ? net : laidBy(shared, net));
  }
  return done;
};

/** Two knots of a net that lie on the edges of others in space, far apart, and the motion that lays them there on the flat. */
const sharedPlaces = (done: readonly Sheet[], net: Sheet): Motion | null => {
  const found = edgeKnots(net).flatMap((knot) => {
    const there = done.map((before) => placeInFlat(before, net, knot)).find((place) => place !== null);
    return there ? [{ here: flatAt(net, knot), there }] : [];
  });
  const [first] = found;
  if (!first) return null;
  const apart = ({ here }: { readonly here: Point }) => distance(here, first.here);
  const far = found.reduce((most, one) => (apart(one) > apart(most) ? one : most));
  if (!(apart(far) > 1)) return null;
  const [a, b, c, d] = [first.there, far.there, first.here, far.here];
  const turn = Math.atan2(b.y - a.y, b.x - a.x) - Math.atan2(d.y - c.y, d.x - c.x);
  return { cos: Math.cos(turn), sin: Math.sin(turn), over: 1, from: c, to: a };
};

/** Where a knot of one net lies on the flat edge of another that it touches in space, or null. */
const placeInFlat = (on: Sheet, net: Sheet, knot: number): Point | null => {
  const p = knotAt(net, knot);
  const knots = edgeKnots(on);
  for (let i = 0; i < knots.length; i++) {
    const [k, l] = [knots[i]!, knots[(i + 1) % knots.length]!];
    const [a, b] = [knotAt(on, k), knotAt(on, l)];
    const along = subtract3(b, a);
    const square = dot3(along, along);
    const t = square > 0 ? Math.min(1, Math.max(0, dot3(subtract3(p, a), along) / square)) : 0;
    if (distance3(p, between3(a, b, t)) > ONE) continue;
    const [f, g] = [flatAt(on, k), flatAt(on, l)];
    return { x: f.x + (g.x - f.x) * t, y: f.y + (g.y - f.y) * t };
  }
  return null;
};
