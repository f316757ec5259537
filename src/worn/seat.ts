import { type HeadForm, surfaceOver } from './head-form.ts';
import { angleFromBack } from './opening.ts';
import type { Sheet } from './sheet.ts';

/** A soft cap is not worn higher over the tape than this for the sake of its top, mm: the head holds the top up instead. Our own measure. */
const HIGH = 20;
/** The top is what lies so far inside the widest place of the crown that the head can hold it up. */
const TOP = 0.35;

/** A cap set down on a head: its sheets as they stand then, and how far its lower edge is over the tape, mm. */
export const seated = (
  sheets: readonly Sheet[],
  head: HeadForm,
  soft: boolean,
): { readonly sheets: readonly Sheet[]; readonly lift: number } => {
  const { hold, lowest } = holdOf(sheets);
  let [sides, all] = [0, 0];
  const everyKnot = (see: (need: number, held: number) => void) => {
    for (const sheet of sheets) {
      if (sheet.open) continue;
      const { at } = sheet;
      const top = isTop(sheet, lowest);
      for (let k = 0; k < at.length; k += 3) {
        const [x, y, z] = [at[k]!, at[k + 1]!, at[k + 2]!];
        const need = surfaceOver(head, x, y) - z;
        if (need > 0) see(need, top ? hold(x, y, z) : 0);
      }
    }
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
  const raised = sheets.map((sheet) => {
    const at = Float64Array.from(sheet.at);
    const still = dome === 0 || !isTop(sheet, lowest);
    for (let k = 0; k < at.length; k += 3) {
      const up = still ? 0 : dome * hold(at[k]!, at[k + 1]!, at[k + 2]!);
      at[k + 2] = at[k + 2]! + lift + up;
    }
    return { ...sheet, at };
  });
  return { sheets: raised, lift };
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
    const [i, t] = [Math.min(Math.floor(part), PARTS - 1), part - Math.floor(part)];
    const widest = reach[i]! + (reach[i + 1]! - reach[i]!) * t;
    const at = height[i]! + (height[i + 1]! - height[i]!) * t;
    if (z < at - SLACK) return 0;
    const share = Math.sqrt(x * x + y * y) / widest;
    return Math.max(0, 1 - share * share);
  };
  return { hold, lowest: Math.min(...height) };
};

/** Reaches nearer than this are the same, and heights nearer than the slack are still the top, mm. */
const [SAME, SLACK] = [0.05, 0.5];
