import { type HeadForm, surfaceOver } from './head-form.ts';
import { angleFromBack } from './opening.ts';
import type { Sheet } from './sheet.ts';

/** A soft cap is not worn higher over the tape than this for the sake of its top, mm: the head holds the top up instead. Our own measure. */
const HIGH = 20;
/** The top is what lies so far inside the widest place of the crown that the head can hold it up. */
const TOP = 0.35;

/** A cap set down on a head. */
export interface Seat {
  readonly sheets: readonly Sheet[];
  /** How far its lower edge is over the tape, mm. */
  readonly lift: number;
  /** Sets down what lies within it, and is leant already; as it stood upright and as it stands. */
  readonly within: (upright: readonly Sheet[], sheets: readonly Sheet[]) => readonly Sheet[];
}

/**
 * A cap set down on a head: it may be leant, but what of it the head holds up is found as it stood upright.
 */
export const seated = (
  upright: readonly Sheet[],
  sheets: readonly Sheet[],
  head: HeadForm,
  soft: boolean,
): Seat => {
  const holds = holdsOf(upright);
  let [sides, all] = [0, 0];
  const everyKnot = (see: (need: number, held: number) => void) => {
    sheets.forEach(({ open, at }, s) => {
      if (open) return;
      const held = holds[s];
      for (let k = 0; k < at.length; k += 3) {
        const need = surfaceOver(head, at[k]!, at[k + 1]!) - at[k + 2]!;
        if (need > 0) see(need, held ? held(k) : 0);
      }
    });
  };
  everyKnot((need, held) => {
    all = Math.max(all, need);
    if (held < TOP) sides = Math.max(sides, need);
  });
  const lift = soft ? Math.max(sides, Math.min(all, HIGH)) : all;
  let dome = 0;
  everyKnot((need, held) => {
    if (held >= TOP) dome = Math.max(dome, (need - lift) / held);
  });
  const raised = (some: readonly Sheet[], held: ReturnType<typeof holdsOf>): readonly Sheet[] =>
    some.map((sheet, s) => {
      const at = Float64Array.from(sheet.at);
      const share = dome === 0 ? null : held[s]!;
      for (let k = 0; k < at.length; k += 3) at[k + 2] = at[k + 2]! + lift + (share ? dome * share(k) : 0);
      return { ...sheet, at };
    });
  return {
    sheets: raised(sheets, holds),
    lift,
    within: (own, lying) => raised(lying, holdsOf(own)),
  };
};

/** For each sheet, how much of the head's push each knot takes, by its place among the numbers; null for what is not top. */
const holdsOf = (sheets: readonly Sheet[]): readonly (((k: number) => number) | null)[] => {
  const { hold, lowest } = holdOf(sheets);
  return sheets.map((sheet) => {
    const { at } = sheet;
    return isTop(sheet, lowest) ? (k) => hold(at[k]!, at[k + 1]!, at[k + 2]!) : null;
  });
};

/** What reaches the middle is top, and what goes higher than the widest place of the crown: not a band, nor the under ring of a beret. mm. */
const MIDDLE = 5;

const isTop = ({ open, at }: Sheet, widest: number): boolean => {
  let [high, inner] = [-Infinity, Infinity];
  for (let k = 0; k < at.length; k += 3) {
    high = Math.max(high, at[k + 2]!);
    inner = Math.min(inner, Math.sqrt(at[k]! ** 2 + at[k + 1]! ** 2));
  }
  return !open && (inner < MIDDLE || high > widest + SLACK);
};

const PARTS = 72;

/** How much of the head's push a place takes: 1 in the middle of the top, 0 at the widest place of the crown and below it; and the least height of that. */
const holdOf = (sheets: readonly Sheet[]) => {
  const [reach, height] = [new Float64Array(PARTS + 1), new Float64Array(PARTS + 1)];
  const partOf = (x: number, y: number) => (angleFromBack(x, y) / (2 * Math.PI)) * PARTS;
  for (const { open, at } of sheets) {
    if (open) continue;
    for (let k = 0; k < at.length; k += 3) {
      const [x, y, z] = [at[k]!, at[k + 1]!, at[k + 2]!];
      const i = Math.round(partOf(x, y)) % PARTS;
      const r = Math.sqrt(x * x + y * y);
      // Of a straight side the upper end counts.
      if (r > reach[i]! + SAME || (r > reach[i]! - SAME && z > height[i]!)) {
        reach[i] = Math.max(r, reach[i]!);
        height[i] = z;
      }
    }
  }
  [reach[PARTS], height[PARTS]] = [reach[0]!, height[0]!];
  const hold = (x: number, y: number, z: number): number => {
    const part = partOf(x, y);
    const i = Math.min(Math.floor(part), PARTS - 1);
    const t = part - i;
    const widest = reach[i]! + (reach[i + 1]! - reach[i]!) * t;
    const at = height[i]! + (height[i + 1]! - height[i]!) * t;
    // What is sewn to the lower edge, at 0, stays there: a crown that narrows upwards is widest there.
    if (z < at - SLACK || z <= 0) return 0;
    const share = Math.sqrt(x * x + y * y) / widest;
    return Math.max(0, 1 - share * share);
  };
  return { hold, lowest: Math.min(...height) };
};

/** Reaches nearer than this are the same, and heights nearer than the slack are still the top, mm. */
const [SAME, SLACK] = [0.05, 0.5];
