import { type Sheet, trianglesIn } from './sheet.ts';

/** Half-planes out of the axis on which lining and shell are compared: corners and middles of most gores lie on them. */
const PLANES = 24;
/** What is on them lies this far within, mm; and so far apart are the levels at which they are compared. */
const [WITHIN, LEVELS] = [0.03, 1];

/**
 * A lining drawn in, level by level and alike on all sides, to lie within its shell, both standing on level 0, where nothing
 * moves. As it is cut, the side of a flaring crown's lining comes through the shell by less than a millimetre: it is shorter,
 * and so it is broader at the same height. Cloth is eased by so much.
 */
export const drawnIn = (lining: readonly Sheet[], shell: readonly Sheet[]): readonly Sheet[] => {
  const high = Math.max(0, ...lining.flatMap(({ at }) => highest(at)));
  const share = new Float64Array(Math.ceil(high / LEVELS) + 2).fill(1);
  const outer = crossSections(shell).map(byLevel);
  crossSections(lining).forEach((cuts, plane) => {
    const draw = (from: number, to: number, r: number, z: number): void => {
      const most = reachAt(outer[plane]!, z) - WITHIN;
      if (r <= most || most <= 0) return;
      for (let level = Math.max(1, from); level <= to; level++) {
        share[level] = Math.min(share[level]!, most / r);
      }
    };
    for (const [r, z, s, w] of cuts) {
      draw(Math.floor(z / LEVELS), Math.ceil(z / LEVELS), r, z);
      draw(Math.floor(w / LEVELS), Math.ceil(w / LEVELS), s, w);
      const [low, top] = [Math.min(z, w), Math.max(z, w)];
      for (let level = Math.ceil(low / LEVELS); level * LEVELS < top; level++) {
        const t = (level * LEVELS - z) / (w - z);
        draw(level, level, r + (s - r) * t, level * LEVELS);
      }
    }
  });
  return lining.map((sheet) => {
    const at = Float64Array.from(sheet.at);
    for (let k = 0; k < at.length; k += 3) {
      const level = Math.max(0, at[k + 2]! / LEVELS);
      const i = Math.floor(level);
      const by = share[i]! + (share[i + 1]! - share[i]!) * (level - i);
      at[k] = at[k]! * by;
      at[k + 1] = at[k + 1]! * by;
    }
    return { ...sheet, at };
  });
};

/** A stretch of a cross-section: how far from the axis and how high it begins, and ends, mm. */
type Cut = readonly [number, number, number, number];

const highest = (at: Float64Array): number => {
  let high = 0;
  for (let k = 2; k < at.length; k += 3) high = Math.max(high, at[k]!);
  return high;
};

/** Where each half-plane cuts the closed sheets. */
const crossSections = (sheets: readonly Sheet[]): readonly (readonly Cut[])[] => {
  const closed = sheets
    .filter(({ open, piece }) => !open && piece !== 'topButton')
    .map((sheet) => ({ at: sheet.at, corners: trianglesIn(sheet) }));
  return Array.from({ length: PLANES }, (_, plane) => {
    const [cos, sin] = [Math.cos((plane * 2 * Math.PI) / PLANES), Math.sin((plane * 2 * Math.PI) / PLANES)];
    return closed.flatMap(({ at, corners }) => {
      const aside = new Float64Array(at.length / 3);
      for (let k = 0; k < aside.length; k++) aside[k] = at[3 * k + 1]! * cos - at[3 * k]! * sin;
      const out = (k: number) => at[3 * k]! * cos + at[3 * k + 1]! * sin;
      const cuts: Cut[] = [];
      for (let i = 0; i < corners.length; i += 3) {
        const sides =
          Number(aside[corners[i]!]! >= 0) +
          Number(aside[corners[i + 1]!]! >= 0) +
          Number(aside[corners[i + 2]!]! >= 0);
        if (sides % 3 === 0) continue;
        const ends: number[] = [];
        for (let n = 0; n < 3; n++) {
          const [p, q] = [corners[i + n]!, corners[i + ((n + 1) % 3)]!];
          const [a, b] = [aside[p]!, aside[q]!];
          if (a >= 0 === b >= 0) continue;
          const t = a / (a - b);
          const r = out(p) + (out(q) - out(p)) * t;
          if (r >= 0) ends.push(r, at[3 * p + 2]! + (at[3 * q + 2]! - at[3 * p + 2]!) * t);
        }
        if (ends.length === 4) cuts.push(ends as unknown as Cut);
      }
      return cuts;
    });
  });
};

/** Heights so near that of an end of a stretch are at it, mm. */
const AT = 1e-9;

/** The stretches of a cross-section, by every level that they come to. */
const byLevel = (cuts: readonly Cut[]): ReadonlyMap<number, readonly Cut[]> => {
  const levels = new Map<number, Cut[]>();
  for (const cut of cuts) {
    const [, z, , w] = cut;
    const top = Math.floor((Math.max(z, w) + AT) / LEVELS);
    for (let level = Math.floor((Math.min(z, w) - AT) / LEVELS); level <= top; level++) {
      const there = levels.get(level);
      if (there) there.push(cut);
      else levels.set(level, [cut]);
    }
  }
  return levels;
};

/** How far from the axis a cross-section is at a height where it is farthest; Infinity where it does not come so high. */
const reachAt = (cuts: ReadonlyMap<number, readonly Cut[]>, height: number): number => {
  let far = -Infinity;
  for (const [r, z, s, w] of cuts.get(Math.floor(height / LEVELS)) ?? []) {
    if (height < Math.min(z, w) - AT || height > Math.max(z, w) + AT) continue;
    const t = Math.abs(w - z) > AT ? (height - z) / (w - z) : r > s ? 0 : 1;
    far = Math.max(far, r + (s - r) * t);
  }
  return far === -Infinity ? Infinity : far;
};
