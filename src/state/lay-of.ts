import type { Placement } from '../nesting/task.ts';
import { clothsOf } from '../pattern/cloths-of.ts';
import { drafted } from './derived.ts';
import type { LayChoice } from './lay-choice.ts';
import type { Studio } from './state.ts';

const NONE: readonly Placement[] = [];

/** What is chosen of the lay, as it counts for the cap: where that is not cut from the chosen cloth, its first one is laid. */
export const layOf = ({ good, lay }: Pick<Studio, 'good' | 'lay'>): LayChoice => {
  const used = clothsOf(drafted(good)?.cutting.pieces ?? []);
  const [first = lay.cloth] = used;
  return used.includes(lay.cloth) ? lay : { ...lay, cloth: first, pins: NONE };
};
