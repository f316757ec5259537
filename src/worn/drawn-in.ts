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
  const [outer, inner] = [crossSections(shell), crossSections(lining)];
  inner.forEach((cuts, plane) => {
    const limit = (z: number): number => reachAt(outer[plane]!, z);
    const note = (level: number, r: number, z: number): void => {
      const most = limit(z) - WITHIN;
      if (level > 0 && r > most && most > 0) share[level] = Math.min(share[level]!, most / r);
    };
    for (const [r, z, s, w] of cuts) {
      for (const [own, there] of [
        [r, z],
        [s, w],
      ] as const) {
        note(Math.floor(there / LEVELS), own, there);
        note(Math.ceil(there / LEVELS), own, there);
      }
      const [low, top] = [Math.min(z, w), Math.max(z, w)];
      for (let level = Math.ceil(low / LEVELS); level * LEVELS < top; level++) {
        const t = (level * LEVELS - z) / (w - z);
        note(level, r + (s - r) * t, level * LEVELS);
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
      const aside = (k: number) => at[3 * k + 1]! * cos - at[3 * k]! * sin;
      const out = (k: number) => at[3 * k]! * cos + at[3 * k + 1]! * sin;
      const cuts: Cut[] = [];
      for (let i = 0; i < corners.length; i += 3) {
        const ends: number[] = [];
        for (let n = 0; n < 3; n++) {
          const [p, q] = [corners[i + n]!, corners[i + ((n + 1) % 3)]!];
          const [a, b] = [aside(p), aside(q)];
          if (a >= 0 === b >= 0) continue;
          const t = a / (a - b);
          const [r, z] = [
            out(p) + (out(q) - out(p)) * t,
            at[3 * p + 2]! + (at[3 * q + 2]! - at[3 * p + 2]!) * t,
          ];
          if (r >= 0) ends.push(r, z);
        }
        if (ends.length === 4) cuts.push(ends as unknown as Cut);
      }
      return cuts;
    });
  });
};

/** How far from the axis a cross-section is at a height where it is farthest; Infinity where it does not come so high. */
const reachAt = (cuts: readonly Cut[], height: number): number => {
  let far = -Infinity;
  for (const [r, z, s, w] of cuts) {
    if (height < Math.min(z, w) - 1e-9 || height > Math.max(z, w) + 1e-9) continue;
    const t = Math.abs(w - z) > 1e-9 ? (height - z) / (w - z) : r > s ? 0 : 1;
    far = Math.max(far, r + (s - r) * t);
  }
  return far === -Infinity ? Infinity : far;
};
