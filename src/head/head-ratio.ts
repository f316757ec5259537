/**
 * Breadth by length of a head that was not measured. Between the ovals of hat blocks (0.83 to 0.86 for a regular
 * oval, from memory) and bare heads (median 0.773 of 6,068 adults, ANSUR II, 2012): an estimate, better measured.
 */
export const USUAL_RATIO = 0.8;

/** Breadth by length of a head, or the usual ratio where one of them was not measured. Both in mm. */
export const headRatio = ({
  length,
  breadth,
}: {
  readonly length: number | null;
  readonly breadth: number | null;
}): number => {
  const ratio = (breadth ?? Number.NaN) / (length ?? Number.NaN);
  return ratio > 0 && ratio < Infinity ? ratio : USUAL_RATIO;
};
