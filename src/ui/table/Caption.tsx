import type { PieceWords } from './piece-words.ts';

/** Name, size and cut count of the piece that is lit or chosen, in one fixed place. The list says it to screen readers. */
export const Caption = ({ words }: { readonly words: PieceWords | null }) => (
  <p className="table-caption" aria-hidden="true">
    {words && (
      <>
        <b>{words.name}</b>
        <span>{words.size}</span>
        <span>{words.cuts}</span>
      </>
    )}
  </p>
);
