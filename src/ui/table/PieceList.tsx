import { memo } from 'react';
import type { Spec } from '../../design/spec.ts';
import type { Unit } from '../../units.ts';
import { onTable } from '../on-table.ts';
import { pieceWords } from './piece-words.ts';

interface PieceListProps {
  readonly spec: Spec;
  readonly unit: Unit;
  readonly chosen: string | null;
  readonly onChoose: (id: string | null) => void;
  readonly onLight: (id: string | null) => void;
}

/** The pieces as a list of buttons, out of sight until one has the focus: it lights its piece, and chooses it. */
export const PieceList = memo(({ spec, unit, chosen, onChoose, onLight }: PieceListProps) => (
  <ul className="table-pieces" aria-label="Pieces on the table">
    {onTable(spec, unit).map(({ drawing }) => {
      const { name, size, cuts } = pieceWords(drawing, unit);
      const isChosen = drawing.id === chosen;
      return (
        <li key={drawing.id}>
          <button
            type="button"
            aria-pressed={isChosen}
            onClick={() => onChoose(isChosen ? null : drawing.id)}
            onFocus={() => onLight(drawing.id)}
            onBlur={() => onLight(null)}
          >
            {[name, size, cuts].filter((s) => s !== '').join(', ')}
          </button>
        </li>
      );
    })}
  </ul>
));
