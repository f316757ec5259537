import { add } from '../geometry/point.ts';
import { LAID_OVERLAP } from '../geometry/tolerance.ts';
import { type ClothLay, laidPolygon } from './cloth-lay.ts';
import { type Region, regionOf } from './region.ts';
import { regionsOverlap } from './regions-overlap.ts';

/**
 * The pieces that lie over another or over the edge of the cloth by more than the shears know, by id: what has to be
 * mended. Only what has to do with the pieces that a hand has moved is looked at.
 */
export const layOverlaps = (lay: ClothLay, byHand: ReadonlySet<string>): ReadonlySet<string> => {
  if (byHand.size === 0) return byHand;
  const pieces = lay.laid.map((laid) => ({
    id: laid.piece.id,
    region: regionOf(laidPolygon(laid)),
    scrap: laid.at.container,
  }));
  const isOut = lay.scraps.length > 0 ? outOfScraps(lay) : outOfWidth(lay);
  const out = pieces.filter(({ id, region, scrap }) => byHand.has(id) && isOut(region, scrap));
  const wrong = new Set(out.map(({ id }) => id));
  for (const [one, other] of besides(pieces)) {
    if (!byHand.has(one.id) && !byHand.has(other.id)) continue;
    if (wrong.has(one.id) && wrong.has(other.id)) continue;
    if (!regionsOverlap(one.region, other.region)) continue;
    wrong.add(one.id);
    wrong.add(other.id);
  }
  return wrong;
};

type IsOut = (region: Region, scrap: number) => boolean;

const outOfWidth = ({ remnant, width }: ClothLay): IsOut => {
  const end = remnant ?? Number.POSITIVE_INFINITY;
  return ({ box: { min, max } }) => Math.max(-min.x, -min.y, max.x - end, max.y - width) > LAID_OVERLAP;
};

const outOfScraps = ({ scraps }: ClothLay): IsOut => {
  const taken = scraps.map(({ scrap, shift }) => [
    regionOf(
      scrap.outline.map((p) => add(p, shift)),
      false,
    ),
    ...scrap.flaws.map((flaw) => regionOf(flaw.map((p) => add(p, shift)))),
  ]);
  return (region, scrap) => taken[scrap]?.some((one) => regionsOverlap(region, one)) !== false;
};

/** The pairs whose boxes meet: in the order of where they begin, each with those that begin before it ends. */
function* besides<T extends { readonly region: Region }>(pieces: readonly T[]): Generator<readonly [T, T]> {
  const sorted = pieces.toSorted((a, b) => a.region.box.min.x - b.region.box.min.x);
  for (const [i, one] of sorted.entries()) {
    const { min, max } = one.region.box;
    for (let j = i + 1; j < sorted.length && sorted[j]!.region.box.min.x <= max.x; j++) {
      const { box } = sorted[j]!.region;
      if (box.min.y <= max.y && box.max.y >= min.y) yield [one, sorted[j]!];
    }
  }
}
