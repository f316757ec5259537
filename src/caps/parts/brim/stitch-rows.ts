/** The first row of topstitching from the outer edge, and the last from the crown, mm: common practice. */
export const FIRST_ROW = 6;

/** How many rows of topstitching, a spacing (mm) apart, go round a brim of some width and stop short of the crown. */
export const stitchRows = (width: number, spacing: number): number =>
  1 + Math.floor((width - 2 * FIRST_ROW) / spacing);
