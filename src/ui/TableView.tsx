import { choose, light } from '../state/actions.ts';
import { shownIn } from '../state/shown.ts';
import type { Studio } from '../state/state.ts';
import { useStudio } from '../state/studio.ts';
import { same } from './same.ts';
import type { Wanted } from './table/desk.ts';
import { Table } from './table/Table.tsx';

/** The table, and the ghost of what lay there while a measure is moved or a change is tried on. */
export const TableView = ({ onReady }: { readonly onReady: () => void }) => (
  <Table
    wanted={wanted}
    onWanted={onWanted}
    chosen={useStudio((s) => s.chosen)}
    onChoose={choose}
    onLight={light}
    onReady={onReady}
  />
);

const wantedOf = (studio: Studio): Wanted => {
  const { good, trial, moving, wish, chosen, lit, litSeam } = studio;
  const spec = shownIn(studio);
  const before = trial === null ? moving?.from : good;
  const ghost = before === undefined || before === spec ? null : before;
  return { spec, ghost, unit: wish.unit, chosen, lit, litSeam };
};

const wanted = (): Wanted => wantedOf(useStudio.getState());

const onWanted = (listener: () => void): (() => void) =>
  useStudio.subscribe((now, before) => {
    if (!same(wantedOf(now), wantedOf(before))) listener();
  });
