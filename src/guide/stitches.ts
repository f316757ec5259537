import type { ClothSpec } from '../cloth/cloth.ts';

/** Stitch lengths, mm: common practice, the usual charts agree. */
export const STITCH = { seam: 2.5, heavySeam: 3, reinforced: 1.5, topstitch: 3, baste: 4.5 } as const;

/** From an edge or a seam to its topstitching, and from the first row to a second, mm: common practice. */
export const EDGE_STITCH = 2;
export const SECOND_ROW = 6;

/** From the needle half way to the side of the presser foot, mm: an eighth of an inch, common practice. */
export const HALF_FOOT = 3.175;

/** Enclosed allowances are trimmed to this, mm: a quarter inch, common practice. */
export const TRIMMED = 6.35;

/** Between clips on a gentle curve and on a sharp one, mm: half an inch and a quarter, common practice. */
export const CLIPS = { gentle: 12.7, sharp: 6.35 } as const;
/** A ring of a smaller radius than this, mm, is a sharp curve. */
const SHARP = 80;

export const clipsFor = (length: number): number =>
  length / (2 * Math.PI) < SHARP ? CLIPS.sharp : CLIPS.gentle;

const heavy = ['tweed', 'melton', 'boiled-wool', 'felt', 'wide-corduroy'];

/** The stitch for a plain seam in some cloths: longer in heavy wool. */
export const seamStitch = (cloths: readonly ClothSpec[]): number =>
  cloths.some(({ kind }) => heavy.includes(kind)) ? STITCH.heavySeam : STITCH.seam;
