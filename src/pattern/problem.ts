import type { Words } from '../words.ts';

/** A wish that cannot be sewn: which field, what is wrong in plain words, and the nearest value that works. */
export interface Problem {
  readonly field: string;
  readonly message: Words;
  readonly nearest?: number;
}
