import type { Piece } from '../pattern/piece.ts';
import type { MarkUse } from './step.ts';

/** Every notch and every named mark of a piece, each name once; `mark` where it is more than a notch. */
export const marksOf = ({ id, notches, marks }: Piece): readonly (MarkUse & { readonly mark: boolean })[] => {
  const named = [
    ...notches.map(({ name }) => ({ piece: id, name, mark: false })),
    ...marks.flatMap((mark) => ('name' in mark ? [{ piece: id, name: mark.name, mark: true }] : [])),
  ];
  return named.filter(({ name }, i) => named.findIndex((other) => other.name === name) === i);
};
