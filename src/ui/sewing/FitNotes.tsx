import { styleOf } from '../../caps/registry.ts';
import { dateWords } from '../../drawing/label-words.ts';
import { useStudio } from '../../state/studio.ts';
import type { Unit } from '../../units.ts';
import { rowValue } from '../row-value.ts';
import { Figures } from '../Said.tsx';

/** The fittings that this head is remembered by. */
export const FitNotes = ({ unit }: { readonly unit: Unit }) => {
  const head = useStudio((s) => s.wish.head);
  const style = useStudio((s) => s.good.cap.style);
  const { parameters } = styleOf(style);
  const notes = head.fittings ?? [];
  if (notes.length === 0) return null;
  const value = (key: string, n: number): string => rowValue(parameters[key], n, unit);
  return (
    <section className="fit-notes">
      <h4>Fittings of {head.name.trim() === '' ? 'this head' : head.name}</h4>
      <ul>
        {notes.map(({ date, found, changed }, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: notes have no other name than their place.
          <li key={i}>
            {dateWords(date)}: {found.join('; ')}.{' '}
            {Object.entries(changed).map(([key, [from, to]]) => (
              <span key={key}>
                {parameters[key]?.label ?? key} <Figures text={`${value(key, from)} → ${value(key, to)}`} />.{' '}
              </span>
            ))}
          </li>
        ))}
      </ul>
    </section>
  );
};
