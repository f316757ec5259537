import type { Form } from '../caps/form.ts';
import type { Piece } from '../pattern/piece.ts';
import { layer } from './lay-on-piece.ts';
import { netOf } from './net.ts';
import type { Sheet } from './sheet.ts';

/**
 * The shell of a cap as nets, copy by copy, each knot with its place on the flat piece: the strips themselves, as they are drafted.
 * A piece that the pattern does not have keeps the place that its strip takes when it is rolled flat.
 */
export const assemble = ({ strips }: Form, pieces: readonly Piece[]): readonly Sheet[] => {
  const copies = new Map<string, Sheet[]>();
  for (const strip of strips) {
    const key = `${strip.piece} ${strip.copy}`;
    copies.set(key, [...(copies.get(key) ?? []), netOf(strip)]);
  }
  const layers = new Map(
    pieces
      .filter(({ id }) => strips.some(({ piece }) => piece === id))
      .map((piece) => [piece.id, layer(piece)]),
  );
  return [...copies.values()].flatMap((nets) => layers.get(nets[0]!.piece)?.(nets) ?? nets);
};
