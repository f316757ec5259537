import type { SheetSet } from '../../print/sheet.ts';
import { papers } from '../../print/sheet-size.ts';
import { useSheets } from './use-sheets.ts';

/** What will come out of the printer. */
export const PrintList = () => {
  const { set, stale } = useSheets();
  return (
    <section className="print-list" aria-live="polite" data-stale={stale || undefined}>
      {set && <Printed set={set} />}
    </section>
  );
};

const Printed = ({ set }: { readonly set: SheetSet }) => (
  <>
    <h3>
      {count(set.sheets.length, papers[set.paper.paper].kind === 'sheets' ? 'sheet' : 'page')}
      {papers[set.paper.paper].kind === 'sheets' && ` of ${papers[set.paper.paper].label}`}
    </h3>
    <ul>
      {linesOf(set).map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  </>
);

const linesOf = ({ sheets, pieces, saved }: SheetSet): readonly string[] => {
  const map = sheets.filter((sheet) => sheet.shows === null);
  const parts = sheets.filter((sheet) => sheet.shows !== null).map((sheet) => sheet.name);
  const halves = pieces.filter((piece) => piece.onFold).length;
  return [
    ...(map.length > 0 ? ['First the sheet map, with test squares of 100 mm and 4 in.'] : []),
    parts.length > 1
      ? `Then ${parts[0]} to ${parts[parts.length - 1]}, ${parts.length} with parts of the pattern.`
      : 'Then the pattern.',
    `${count(pieces.length, 'piece')}${halves > 0 ? `, ${halves} of them as halves on the fold` : ''}.`,
    ...(saved > 0 ? [`${count(saved, 'sheet')} fewer than with the pieces laid in rows.`] : []),
    'Lines are black and told apart by dash and weight.',
  ];
};

const count = (n: number, thing: string): string => `${n} ${thing}${n === 1 ? '' : 's'}`;
