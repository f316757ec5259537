import { pathLength } from '../geometry/measure.ts';
import { SEAM } from '../geometry/tolerance.ts';
import type { Pattern } from './pattern.ts';
import type { Piece } from './piece.ts';
import type { EdgeUse, Seam } from './seam.ts';

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
  const pieces = new Map(pattern.pieces.map((piece) => [piece.id, piece]));
  const lengths = edgeLengths(pattern.pieces);
  return pattern.seams.map((seam) => {
    const a = walkChain(pieces, lengths, seam.a);
    const b = walkChain(pieces, lengths, seam.b);
    const ease = b.length / a.length - 1;
    const scale = 1 + seam.ease;
    const difference = b.length / scale - a.length;
    const notches = pairNotches(a, b, scale, seam.ring ?? false);
    const meets = Math.abs(difference) <= SEAM && notches.unmatched.length === 0;
    return { seam, a: a.length, b: b.length, difference, ease, notches, meets };
  });
};

interface Stop {
  readonly at: number;
  readonly count: number;
  readonly name: string;
}

/** One side of a seam, laid out straight: its length, the notches on it and the joints between its edges. */
interface Side {
  readonly length: number;
  readonly stops: readonly Stop[];
  readonly joints: readonly number[];
}

type Lengths = ReadonlyMap<string, number>;

const edgeLengths = (pieces: readonly Piece[]): Lengths =>
  new Map(pieces.flatMap((p) => p.outline.map((e) => [`${p.id}.${e.name}`, pathLength(e.path)] as const)));

function walkChain(pieces: ReadonlyMap<string, Piece>, lengths: Lengths, chain: readonly EdgeUse[]): Side {
  let length = 0;
  const stops: Stop[] = [];
  const joints = [0];
  for (const use of chain) {
    const piece = pieces.get(use.piece);
    const whole = lengths.get(`${use.piece}.${use.edge}`);
    if (!piece || whole === undefined) throw new RangeError(`no edge ${use.piece}.${use.edge} to sew`);
    const [from, to] = [use.from ?? 0, use.to ?? whole];
    for (const notch of piece.notches) {
      if (notch.edge !== use.edge) continue;
      const along = use.backwards ? whole - notch.at : notch.at;
      if (along < from - SEAM || along > to + SEAM) continue;
      stops.push({ at: length + along - from, count: notch.count, name: `${piece.name}, ${notch.name}` });
    }
    length += to - from;
    joints.push(length);
  }
  return { length, stops, joints };
}

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
