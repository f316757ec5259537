/**
 * Notches along the seam between top and side, as shares of its length from the front: one at the front and in the middle, two at
 * the back.
 */
export const SEAM_NOTCHES = [
  { share: 0.25, count: 1, name: 'front' },
  { share: 0.5, count: 1, name: 'middle' },
  { share: 0.75, count: 2, name: 'back' },
] as const;
