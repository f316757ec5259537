import type { LengthParameter } from '../../parameter.ts';

/** How high a cap of top and sides stands, mm, with what is usual for a kind of cap. */
export const crownHeightParameter = (
  usual: readonly [number, number],
  standard: number,
): LengthParameter => ({
  kind: 'length',
  label: 'Crown height',
  help: 'How high the top stands over the lower edge. More is fuller over the head.',
  group: 'crown',
  min: 66,
  max: 180,
  step: 2,
  inchStep: 1 / 8,
  default: standard,
  usual,
});
