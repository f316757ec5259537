import { styleOf } from '../../caps/registry.ts';
import { fittedElsewhere } from '../../design/fitted-elsewhere.ts';
import { putValues } from '../../state/cap-actions.ts';
import { useStudio } from '../../state/studio.ts';
import { rowValue } from '../row-value.ts';
import { Figures } from '../Said.tsx';

/** What the cap on the table has from the fitting of another head, and the way back to what is usual. */
export const FittedElsewhere = () => {
  const heads = useStudio((s) => s.heads);
  const head = useStudio((s) => s.wish.head);
  const { style, values } = useStudio((s) => s.wish.cap);
  const unit = useStudio((s) => s.wish.unit);
  const { parameters } = styleOf(style);
  const others = Object.entries(fittedElsewhere(heads, head, values)).flatMap(([key, card]) => {
    const row = parameters[key];
    return row === undefined || row.default === values[key] ? [] : [{ key, card, row }];
  });
  if (others.length === 0) return null;
  return (
    <div className="remark">
      {others.map(({ key, card, row }) => (
        <p key={key}>
          {row.label} <Figures text={rowValue(row, Number(values[key]), unit)} /> is what fitted{' '}
          {card.name.trim()}; usual is <Figures text={rowValue(row, Number(row.default), unit)} />.
        </p>
      ))}
      <button
        type="button"
        onClick={() => putValues(Object.fromEntries(others.map(({ key, row }) => [key, row.default])))}
      >
        Use what is usual
      </button>
    </div>
  );
};
