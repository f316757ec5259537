/**
 * The arc over the top of the head from edge to edge, as parts of the girth: 14 in from front to back and 13 in from
 * side to side for a crown of 24 in (F. Anslow, Practical Millinery, 1922, p. 88). No survey of it was found; that
 * it grows with the girth, and the room left on both sides, are our own.
 */
export const ARC_PARTS = { frontToBack: 14 / 24, sideToSide: 13 / 24 } as const;

/**
 * The way over the head from edge to edge, mm: as measured, or estimated from the girth, half-way between front to
 * back and side to side (F. Anslow, Practical Millinery, 1922, p. 88). Better measured.
 */
export const headArc = (measured: number | null, girth: number): number =>
  measured ?? (girth * (ARC_PARTS.frontToBack + ARC_PARTS.sideToSide)) / 2;
