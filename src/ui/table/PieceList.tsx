import { memo } from 'react';
import type { PieceWords } from './piece-words.ts';

interface PieceListProps {
  readonly pieces: readonly PieceWords[];
  readonly chosen: string | null;
  readonly onChoose: (id: string | null) => void;
  readonly onLight: (id: string | null) => void;
}

/** The pieces as a list of buttons, out of sight until one has the focus: it lights its piece, and chooses it. */
export const PieceList = memo(({ pieces, chosen, onChoose, onLight }: PieceListProps) => (
  <ul className="table-pieces" aria-label="Pieces on the table">
    {pieces.map(({ id, name, size, cuts }) => (
      <li key={id}>
        <button
          type="button"
          aria-pressed={id === chosen}
          onClick={() => onChoose(id === chosen ? null : id)}
          onFocus={() => onLight(id)}
          onBlur={() => onLight(null)}
        >
          {[name, size, cuts].filter((s) => s !== '').join(', ')}
        </button>
      </li>
    ))}
  </ul>
));
