import { useEffect, useState } from 'react';
import type { ParameterTable } from '../../caps/parameter.ts';
import { fetchStyle, isFetched, isStyleId, styleOf } from '../../caps/registry.ts';
import type { FitNote } from '../../design/spec.ts';
import { dateWords } from '../../drawing/label-words.ts';
import { useStudio } from '../../state/studio.ts';
import type { Unit } from '../../units.ts';
import { rowValue } from '../row-value.ts';
import { Figures } from '../Said.tsx';

/** The fittings that this head is remembered by. */
export const FitNotes = ({ unit }: { readonly unit: Unit }) => {
  const head = useStudio((s) => s.wish.head);
  const notes = head.fittings ?? [];
  if (notes.length === 0) return null;
  return (
    <section className="fit-notes">
      <h4>Fittings of {head.name.trim() === '' ? 'this head' : head.name}</h4>
      <ul>
        {notes.map((note, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: notes have no other name than their place.
          <Note key={i} note={note} unit={unit} />
        ))}
      </ul>
    </section>
  );
};

/** A fitting of a cap of any style, in the words of that style. */
const Note = ({
  note: { date, style, found, changed },
  unit,
}: {
  readonly note: FitNote;
  readonly unit: Unit;
}) => {
  const rows = useRows(style);
  return (
    <li>
      {dateWords(date)}: {found.join('; ')}.{' '}
      {Object.entries(changed).map(([key, [from, to]]) => {
        const row = rows[key];
        if (row === undefined) return null;
        return (
          <span key={key}>
            {row.label} <Figures text={`${rowValue(row, from, unit)} → ${rowValue(row, to, unit)}`} />.{' '}
          </span>
        );
      })}
    </li>
  );
};

const NONE: ParameterTable = {};

/** The rows of a style once it is there: none until then, where it cannot be fetched, or where there is no such style. */
const useRows = (style: string): ParameterTable => {
  const [, setTried] = useState<string | null>(null);
  const known = isStyleId(style) && isFetched(style);
  useEffect(() => {
    if (known || !isStyleId(style)) return;
    const tell = () => setTried(style);
    fetchStyle(style).then(tell, tell);
  }, [style, known]);
  return known ? styleOf(style).parameters : NONE;
};
