import type { Values } from '../caps/parameter.ts';
import { fetchStyle, type StyleId, styleOf } from '../caps/registry.ts';
import { valuesFor } from '../design/change-style.ts';
import { settle, wishing } from './actions.ts';
import { judged } from './derived.ts';
import { lastPress } from './last-press.ts';
import { useStudio } from './studio.ts';

const get = useStudio.getState;
const set = useStudio.setState;

/** Changes the style once its rules are there. The head, the paper and every value that both styles have stay. */
export const putStyle = async (id: StyleId): Promise<void> => {
  const isLast = lastPress();
  try {
    const style = await fetchStyle(id);
    if (!isLast()) return;
    settle();
    const { wish, good } = get();
    const head = judged(good).given?.head ?? null;
    const values = valuesFor(style, wish.cap.values, styleOf(wish.cap.style), head);
    const cap = { ...wish.cap, style: id, values };
    set(wishing({ ...wish, cap }));
  } catch {
    set({ notice: 'This style could not be fetched. Please reload the page when there is a connection.' });
  }
};

/** Sets several values of the cap at once, as one step. */
export const putValues = (values: Partial<Values>): void => {
  settle();
  const { wish } = get();
  set(wishing({ ...wish, cap: { ...wish.cap, values: { ...wish.cap.values, ...(values as Values) } } }));
};
