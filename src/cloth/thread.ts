import type { SeamReport } from '../pattern/seam-check.ts';
import { MM_PER_YARD, type Unit } from '../units.ts';

/**
 * Thread of a lockstitch (ISO 4915, class 301) for each length of seam: both threads together, 2.5 to 3 times it
 * (common practice); topstitching and tacking again as much as half of the seams.
 */
const PER_SEAM = 3;
const TOPSTITCHED = 0.5;
/** For ends, tests and the second try. */
const SPARE = 0.25;

/** Whole metres or yards, up. */
export const threadWords = (mm: number, unit: Unit): string =>
  unit === 'cm' ? `${Math.ceil(mm / 1000)} m` : `${Math.ceil(mm / MM_PER_YARD)} yd`;

/** Thread for a cap, mm: an estimate from the length of its seams. */
export const threadFor = (seams: readonly SeamReport[]): number =>
  seams.reduce((sum, { a, b }) => sum + Math.max(a, b), 0) * (1 + TOPSTITCHED) * PER_SEAM * (1 + SPARE);
