import type { Notch } from '../../pattern/piece.ts';

/** Side, centre front and side along an edge that goes once round from the centre back. */
export const quarterNotches = (edge: string, girth: number): readonly Notch[] => [
  { edge, at: girth / 4, count: 1, name: 'side' },
  { edge, at: girth / 2, count: 1, name: 'centre front' },
  { edge, at: (girth * 3) / 4, count: 1, name: 'side' },
];

/** The middle of each quarter along the same edge. */
export const eighthNotches = (edge: string, girth: number): readonly Notch[] =>
  [1, 3, 5, 7].map((n) => ({ edge, at: (girth * n) / 8, count: 1, name: 'middle of a quarter' }));
