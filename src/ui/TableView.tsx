import { choose, light } from '../state/actions.ts';
import { useStudio } from '../state/studio.ts';
import { Table } from './table/Table.tsx';

/** The table, with the last cap that can be sewn, and the ghost of what lay there while a measure is moved. */
export const TableView = ({ onReady }: { readonly onReady: () => void }) => {
  const spec = useStudio((s) => s.good);
  const from = useStudio((s) => s.moving?.from ?? null);
  const unit = useStudio((s) => s.wish.unit);
  const chosen = useStudio((s) => s.chosen);
  const lit = useStudio((s) => s.lit);
  const litSeam = useStudio((s) => s.litSeam);
  return (
    <Table
      spec={spec}
      ghost={from === spec ? null : from}
      unit={unit}
      chosen={chosen}
      lit={lit}
      litSeam={litSeam}
      onChoose={choose}
      onLight={light}
      onReady={onReady}
    />
  );
};
