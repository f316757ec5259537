import { useMemo } from 'react';
import { choose, light } from '../state/actions.ts';
import { derived } from '../state/derived.ts';
import { useStudio } from '../state/studio.ts';
import { onTable } from './on-table.ts';
import { seamOnTable } from './seam-on-table.ts';
import { Table } from './table/Table.tsx';
import { useDrawn } from './use-drawn.ts';

/** The table, with the last cap that can be sewn, and the ghost of what lay there while a measure is moved. */
export const TableView = () => {
  const good = useStudio((s) => s.good);
  const from = useStudio((s) => s.moving?.from ?? null);
  const unit = useStudio((s) => s.wish.unit);
  const drawings = useDrawn(good, unit);
  const chosen = useStudio((s) => s.chosen);
  const lit = useStudio((s) => s.lit);
  const litSeam = useStudio((s) => s.litSeam);
  const draft = useStudio((s) => derived(s.good).draft);
  const seam = useMemo(
    () =>
      draft === null || litSeam === null
        ? undefined
        : seamOnTable(draft.pattern, draft.cutting, drawings, litSeam),
    [draft, drawings, litSeam],
  );
  return (
    <Table
      subject={good.cap.style}
      drawings={drawings}
      ghost={from === null || from === good ? null : onTable(from, unit)}
      unit={unit}
      chosen={chosen}
      lit={lit}
      {...(seam ? { seam } : {})}
      onChoose={choose}
      onLight={light}
    />
  );
};
