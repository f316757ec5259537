import { type NoFit, noFitOf } from './no-fit.ts';
import type { Plan } from './plan.ts';
import type { Ring } from './ring.ts';
import type { Stance } from './stances.ts';

/**
 * How a stance that moves meets one that stands: the no-fit polygon both share with every other pair of the same
 * outlines at the same angle to each other, and the turn that brings the way between them into its frame.
 */
export interface Meeting {
  readonly noFit: NoFit;
  /** What the place of the moving one, seen from the standing one, is turned by; a half turn where they change roles. */
  readonly cosine: number;
  readonly sine: number;
}

/** The meetings reckoned so far, by standing × count + moving. Each is reckoned when first asked for. */
export interface Meetings {
  readonly plan: Plan;
  readonly table: (Meeting | undefined)[];
  readonly noFits: Map<string, NoFit>;
}

export const noMeetings = (plan: Plan): Meetings => ({
  plan,
  table: new Array(plan.stances.length ** 2).fill(undefined),
  noFits: new Map(),
});

export const meetingOf = (all: Meetings, standing: number, moving: number): Meeting => {
  const { stances } = all.plan;
  const at = standing * stances.length + moving;
  const known = all.table[at];
  if (known !== undefined) return known;
  const [a, b] = [stances[standing]!, stances[moving]!];
  // Seen from the moving one, the standing one lies the other way: one no-fit polygon serves both.
  const swapped = a.base > b.base;
  const [first, second] = swapped ? [b, a] : [a, b];
  const cosine = first.cosine * second.cosine + first.sine * second.sine;
  const sine = first.cosine * second.sine - first.sine * second.cosine;
  const key = `${first.base} ${second.base} ${cosine.toFixed(9)} ${sine.toFixed(9)}`;
  let noFit = all.noFits.get(key);
  if (noFit === undefined) {
    noFit = noFitOf(ringBeside(all, first, second), ringBeside(all, second, first), cosine, sine);
    all.noFits.set(key, noFit);
  }
  const sign = swapped ? -1 : 1;
  const meeting = { noFit, cosine: sign * first.cosine, sine: -sign * first.sine };
  all.table[at] = meeting;
  return meeting;
};

const ringBeside = ({ plan: { bases } }: Meetings, { base }: Stance, other: Stance): Ring => {
  const { ring, edgeRing } = bases[base]!;
  return bases[other.base]!.edgeRing === null ? (edgeRing ?? ring) : ring;
};
