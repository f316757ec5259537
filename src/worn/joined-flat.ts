import { distance, type Point } from '../geometry/point.ts';
import { between3, distance3, dot3, subtract3 } from '../geometry/space.ts';
import { laidBy, type Motion } from './motion.ts';
import { edgeKnots, flatAt, knotAt, type Sheet } from './sheet.ts';

/** Knots nearer than this (mm) in space are one. */
const ONE = 0.02;

/**
 * The nets of one copy beside each other on the flat: each that shares a rail or a part of one with those before is moved so that
 * the two lie on each other.
 */
export const joinedFlat = (nets: readonly Sheet[]): readonly Sheet[] => {
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
