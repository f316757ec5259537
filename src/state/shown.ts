import type { Spec } from '../design/spec.ts';
import type { Studio } from './state.ts';

/** What the table shows: a change on trial, else the last wish that could be drafted. */
export const shownIn = ({ trial, good }: Pick<Studio, 'trial' | 'good'>): Spec => trial ?? good;
