import { boxesMeet, boxOf } from '../geometry/box.ts';
import { contains } from '../geometry/inside.ts';
import { polygon } from '../geometry/path.ts';
import { add, type Point } from '../geometry/point.ts';
import { type ClothLay, laidPolygon } from './cloth-lay.ts';

/** Outlines may run into each other, or over the edge, by this much, mm: the shears do not know it. */
const TOUCH = 0.05;

/** The pieces that lie over another or over the edge of the cloth, by id: what a hand that moved them has to mend. */
export const layOverlaps = (lay: ClothLay): ReadonlySet<string> => {
  const rings = lay.laid.map((laid) => ({ id: laid.piece.id, ring: laidPolygon(laid) }));
  const boxes = rings.map(({ ring }) => boxOf(ring));
  const end = lay.remnant ?? Number.POSITIVE_INFINITY;
  const grounds = lay.scraps.map(({ scrap, shift }) => [
    { ring: scrap.outline.map((p) => add(p, shift)), inside: true },
    ...scrap.flaws.map((flaw) => ({ ring: flaw.map((p) => add(p, shift)), inside: false })),
  ]);
  const wrong = new Set<string>();
  rings.forEach(({ id, ring }, i) => {
    const { min, max } = boxes[i]!;
    const over =
      grounds.length > 0
        ? grounds[lay.laid[i]!.at.container]?.some((bound) => leaves(ring, bound)) !== false
        : min.x < -TOUCH || min.y < -TOUCH || max.x > end + TOUCH || max.y > lay.width + TOUCH;
    if (over) wrong.add(id);
    for (let j = i + 1; j < rings.length; j++) {
      const other = rings[j]!;
      if (!boxesMeet(boxes[i]!, boxes[j]!) || !meet(ring, other.ring)) continue;
      wrong.add(id);
      wrong.add(other.id);
    }
  });
  return wrong;
};

interface Bound {
  readonly ring: readonly Point[];
  /** To be stayed in, or out of. */
  readonly inside: boolean;
}

const leaves = (piece: readonly Point[], { ring, inside }: Bound): boolean =>
  inside
    ? cross(piece, ring) || piece.some((p) => !deepIn(p, ring) && !nearRing(p, ring))
    : meet(piece, ring);

const nearRing = (p: Point, ring: readonly Point[]): boolean =>
  sides(ring).some(([a, b]) => nearTo(p, a, b) <= TOUCH);

/** Whether one ring goes into the other by more than a touch. */
const meet = (a: readonly Point[], b: readonly Point[]): boolean =>
  cross(a, b) || a.some((p) => deepIn(p, b)) || b.some((p) => deepIn(p, a));

const sides = (ring: readonly Point[]) => ring.map((p, i) => [p, ring[(i + 1) % ring.length]!] as const);

/** Whether some sides cross, each well beyond the other. */
const cross = (a: readonly Point[], b: readonly Point[]): boolean => {
  const others = sides(b);
  return sides(a).some(([p, q]) =>
    others.some(([r, s]) => {
      const [dp, dq] = [away(p, r, s), away(q, r, s)];
      const [dr, ds] = [away(r, p, q), away(s, p, q)];
      return apart(dp, dq) && apart(dr, ds);
    }),
  );
};

const apart = (a: number, b: number): boolean => Math.min(a, b) < -TOUCH && Math.max(a, b) > TOUCH;

/** Signed distance of a point from the line through two others, mm. */
const away = (p: Point, from: Point, to: Point): number => {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  return (dx * (p.y - from.y) - dy * (p.x - from.x)) / Math.hypot(dx, dy);
};

const deepIn = (p: Point, ring: readonly Point[]): boolean =>
  contains(polygon(ring), p) && !nearRing(p, ring);

const nearTo = (p: Point, a: Point, b: Point): number => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const t = Math.min(1, Math.max(0, ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy || 1)));
  return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
};
