import type { LengthParameter } from '../parameter.ts';

/** How loosely the cap sits, mm, with what is usual for a kind of cap. */
export const easeParameter = (usual: readonly [number, number], standard: number): LengthParameter => ({
  kind: 'length',
  label: 'Ease',
  help: 'How much larger the cap is inside than the head. More sits looser.',
  group: 'fit',
  min: 0,
  max: 40,
  step: 2,
  inchStep: 1 / 8,
  default: standard,
  usual,
});
