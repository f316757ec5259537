import type { Studio } from './state.ts';
import { useStudio } from './studio.ts';

const none: readonly string[] = [];

/** Those of the cap on the table. */
export const ticksNow = ({ ticks, capId }: Pick<Studio, 'ticks' | 'capId'>): readonly string[] =>
  ticks[capId] ?? none;

/** Ticks a step of the sewing off, or takes the tick away. */
export const tick = (id: string, done: boolean): void => {
  const others = ticksNow(useStudio.getState()).filter((one) => one !== id);
  put(done ? [...others, id] : others);
};

export const untick = (ids: readonly string[]): void =>
  put(ticksNow(useStudio.getState()).filter((one) => !ids.includes(one)));

const put = (those: readonly string[]): void => {
  const { ticks, capId } = useStudio.getState();
  useStudio.setState({ ticks: { ...ticks, [capId]: those } });
};
