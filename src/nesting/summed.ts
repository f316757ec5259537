import { Clipper64, ClipType, FillRule } from 'clipper2-ts';
import type { Cycle } from './convolution.ts';

/** How far off an edge (grid steps) its two sides are looked at; edges shorter than a few of these are not. */
const ASIDE = 3;
const SHORT = 20;

/**
 * The rings that bound where closed walks wind round more than nought times: outer ones counter-clockwise, holes
 * clockwise. The library that unites them errs now and then where many edges run together, so each edge is looked at
 * from both sides: `sound` says whether all hold; those rings that do not are told apart.
 */
export const summed = (
  cycles: readonly Cycle[],
): { readonly rings: readonly Cycle[]; readonly sound: boolean } => {
  const clipper = new Clipper64();
  clipper.preserveCollinear = false;
  clipper.addSubject(cycles as Cycle[]);
  const rings: Cycle[] = [];
  clipper.execute(ClipType.Union, FillRule.Positive, rings);
  const holding = rings.map((ring) => bounds(ring, cycles));
  // A hole that is none would be taken for room; an outer ring is kept even so.
  const kept = rings.filter((ring, k) => holding[k] === true || twiceArea(ring) > 0);
  return { rings: kept, sound: rings.length > 0 && holding.every((one) => one) };
};

/** Whether every edge has the inside on its left and the outside on its right. */
const bounds = (ring: Cycle, cycles: readonly Cycle[]): boolean =>
  ring.every((p, i) => {
    const q = ring[(i + 1) % ring.length]!;
    const length = Math.sqrt((q.x - p.x) ** 2 + (q.y - p.y) ** 2);
    if (length < SHORT) return true;
    const nx = (-(q.y - p.y) / length) * ASIDE;
    const ny = ((q.x - p.x) / length) * ASIDE;
    // Not the very middle: there other edges like to meet it.
    const x = p.x + (q.x - p.x) * OFF_MIDDLE;
    const y = p.y + (q.y - p.y) * OFF_MIDDLE;
    return winding(cycles, x + nx, y + ny) > 0 && winding(cycles, x - nx, y - ny) <= 0;
  });
const OFF_MIDDLE = 0.4871;

const winding = (cycles: readonly Cycle[], x: number, y: number): number => {
  let turns = 0;
  for (const cycle of cycles) {
    let a = cycle[cycle.length - 1]!;
    for (const b of cycle) {
      if (a.y > y !== b.y > y) {
        const left = (b.x - a.x) * (y - a.y) - (x - a.x) * (b.y - a.y);
        if (b.y > a.y) turns += left > 0 ? 1 : 0;
        else turns -= left < 0 ? 1 : 0;
      }
      a = b;
    }
  }
  return turns;
};

/** Twice the area, positive counter-clockwise. */
export const twiceArea = (ring: Cycle): number => {
  let twice = 0;
  ring.forEach((p, i) => {
    const q = ring[(i + 1) % ring.length]!;
    twice += (p.x - ring[0]!.x) * (q.y - ring[0]!.y) - (q.x - ring[0]!.x) * (p.y - ring[0]!.y);
  });
  return twice;
};
