import { ARC_PARTS } from './shape.ts';

/**
 * The way over the head from edge to edge, mm: as measured, or estimated from the girth, half-way between front to
 * back and side to side (F. Anslow, Practical Millinery, 1922, p. 88). Better measured.
 */
export const headArc = (measured: number | null, girth: number): number =>
  measured ?? (girth * (ARC_PARTS.frontToBack + ARC_PARTS.sideToSide)) / 2;
