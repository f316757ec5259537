import type { Placed } from '../../drawing/arrange.ts';
import type { Unit } from '../../units.ts';
import { pieceWords } from './piece-words.ts';

interface CaptionProps {
  readonly drawings: readonly Placed[];
  readonly unit: Unit;
  readonly shown: string | null;
}

/** Name, size and cut count of the piece that is lit or chosen, in one fixed place. The list says it to screen readers. */
export const Caption = ({ drawings, unit, shown }: CaptionProps) => {
  const drawing = drawings.find((p) => p.drawing.id === shown)?.drawing;
  if (!drawing) return <p className="table-caption" aria-hidden="true" />;
  const { name, size, cuts } = pieceWords(drawing, unit);
  return (
    <p className="table-caption" aria-hidden="true">
      <b>{name}</b>
      <span>{size}</span>
      <span>{cuts}</span>
    </p>
  );
};
