import type { Unit } from '../units.ts';
import type { LabelFacts } from './label-words.ts';

/** How a pattern is to be drawn. */
export interface DrawingOptions {
  readonly unit: Unit;
  /** Foldable pieces as halves on the fold. */
  readonly halves: boolean;
  readonly dimensions: boolean;
  /** What every piece says besides its name and cut; null on the table, where those two are enough. */
  readonly label: LabelFacts | null;
}
