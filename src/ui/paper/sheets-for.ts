import { fetchStyle } from '../../caps/registry.ts';
import type { Spec } from '../../design/spec.ts';
import { drawPattern } from '../../drawing/draw-piece.ts';
import { rowsOf, withRows } from '../../guide/rows.ts';
import type { PaperSpec } from '../../print/paper.ts';
import { paperProblems } from '../../print/paper-problems.ts';
import type { SheetSet } from '../../print/sheet.ts';
import { sheetsOf } from '../../print/sheets.ts';
import { drafted } from '../../state/derived.ts';
import type { Unit } from '../../units.ts';
import { headingOf } from '../heading-of.ts';

/** A cap to be laid out, the paper as wished, and what the sheets say of the day. */
export interface SheetsOrder {
  readonly spec: Spec;
  readonly paper: PaperSpec;
  readonly unit: Unit;
  /** As 2026-11-25. */
  readonly date: string;
  /** Whether the first sheet shows the cap worn. */
  readonly pictured: boolean;
}

/** The sheets of a cap. Null where it cannot be sewn, or where the paper cannot be printed on. */
export const sheetsFor = async ({
  spec,
  paper,
  unit,
  date,
  pictured,
}: SheetsOrder): Promise<SheetSet | null> => {
  await fetchStyle(spec.cap.style);
  const draft = drafted(spec);
  if (draft === null || paperProblems(paper).length > 0) return null;
  const heading = headingOf(draft, unit, date);
  const pieces = withRows(draft.cutting.pieces, rowsOf({ ...draft, cloths: spec.cloths }));
  const drawings = drawPattern(
    { ...draft.cutting, pieces },
    { unit, halves: paper.halves, dimensions: false, label: heading },
  );
  const picture = pictured ? await import('../preview/picture-now.ts').then((m) => m.pictureNow(spec)) : null;
  return sheetsOf(drawings, paper, heading, picture);
};
