import { choose, light } from '../state/actions.ts';
import type { Studio } from '../state/state.ts';
import { useStudio } from '../state/studio.ts';
import { same } from './same.ts';
import type { Wanted } from './table/desk.ts';
import { Table } from './table/Table.tsx';

/** The table, with the last cap that can be sewn, and the ghost of what lay there while a measure is moved. */
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

const wantedOf = ({ good, moving, wish: { unit }, chosen, lit, litSeam }: Studio): Wanted => ({
  spec: good,
  ghost: moving === null || moving.from === good ? null : moving.from,
  ...{ unit, chosen, lit, litSeam },
});

const wanted = (): Wanted => wantedOf(useStudio.getState());

const onWanted = (listener: () => void): (() => void) =>
  useStudio.subscribe((now, before) => {
    if (!same(wantedOf(now), wantedOf(before))) listener();
  });
