import type { Words } from '../words.ts';

/**
 * What can be said of a measurement: fine, worth a second look, or no head at all.
 * The message may be empty when all is fine. `likely` is a length in mm that was probably meant.
 */
export interface Judgement {
  readonly kind: 'fine' | 'warning' | 'error';
  readonly message: Words;
  readonly likely?: number;
}

export const fine = (message: Words = []): Judgement => ({ kind: 'fine', message });
export const warning = (message: Words): Judgement => ({ kind: 'warning', message });
export const error = (message: Words): Judgement => ({ kind: 'error', message });
