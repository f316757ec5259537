/** What no lay reckons: a pattern that has to meet in the seams (common practice: a repeat more for each row of pieces). */
export const STRIPES =
  'Stripes and checks are not matched in the lay: for them buy one repeat more for each row of pieces across the cloth.';
