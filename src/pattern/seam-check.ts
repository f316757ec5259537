import { SEAM } from '../geometry/tolerance.ts';
import { type Side, walker } from './chain.ts';
import type { Pattern } from './pattern.ts';
import type { Seam } from './seam.ts';

/** What the check found of one seam. Lengths in mm, measured on the pieces' own edges. */
export interface SeamReport {
  readonly seam: Seam;
  readonly a: number;
  readonly b: number;
  /** b less a, after the stated ease is taken off b. */
  readonly difference: number;
  /** Measured ease ratio, b/a − 1. */
  readonly ease: number;
  readonly notches: { readonly matched: number; readonly unmatched: readonly string[] };
  /** Both sides equal within the seam tolerance, and every notch has its partner. */
  readonly meets: boolean;
}

/** Measures both sides of every seam and pairs their notches. */
export const checkSeams = (pattern: Pattern): readonly SeamReport[] => {
  const walk = walker(pattern.pieces);
  return pattern.seams.map((seam) => {
    const a = walk(seam.a);
    const b = walk(seam.b);
    const ease = b.length / a.length - 1;
    const scale = 1 + seam.ease;
    const difference = b.length / scale - a.length;
    const notches = pairNotches(a, b, scale, seam.ring ?? false);
    const meets = Math.abs(difference) <= SEAM && notches.unmatched.length === 0;
    return { seam, a: a.length, b: b.length, difference, ease, notches, meets };
  });
};

/**
 * Notches meet when they stand at the same place with the same count; a joint between pieces is as good as a notch.
 * Counts the places where they meet.
 */
function pairNotches(a: Side, b: Side, scale: number, ring: boolean): SeamReport['notches'] {
  const place = (at: number) => (ring && Math.abs(at - a.length) <= SEAM ? 0 : at);
  const meet = (onA: number, onB: number) => Math.abs(place(onA) - place(onB / scale)) <= SEAM;
  const notched = a.stops.map((s) => b.stops.some((t) => t.count === s.count && meet(s.at, t.at)));
  const joined = a.stops.map((s) => b.joints.some((j) => meet(s.at, j)));
  const lonelyA = a.stops.filter((_, i) => !notched[i] && !joined[i]);
  const partnerless = b.stops.filter((t) => !a.stops.some((s) => s.count === t.count && meet(s.at, t.at)));
  const lonelyB = partnerless.filter((t) => !a.joints.some((j) => meet(j, t.at)));
  return {
    matched: a.stops.length - lonelyA.length + partnerless.length - lonelyB.length,
    unmatched: [...lonelyA, ...lonelyB].map((stop) => stop.name),
  };
}
