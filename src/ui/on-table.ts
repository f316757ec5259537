import type { Spec } from '../design/spec.ts';
import { arrange, type Placed } from '../drawing/arrange.ts';
import { drawWhole } from '../drawing/draw-whole.ts';
import type { PieceDrawing } from '../drawing/drawing.ts';
import { rowsOf, withRows } from '../guide/rows.ts';
import type { Allowances, Pattern } from '../pattern/pattern.ts';
import type { Piece } from '../pattern/piece.ts';
import { drafted } from '../state/derived.ts';
import type { Unit } from '../units.ts';
import { same } from './same.ts';

const drawn: Readonly<Record<Unit, WeakMap<Spec, readonly Placed[]>>> = {
  cm: new WeakMap(),
  in: new WeakMap(),
};

/** The pieces of a spec as they lie on the table, drawn once for each spec and unit. */
export const onTable = (spec: Spec, unit: Unit): readonly Placed[] => {
  const before = drawn[unit].get(spec);
  if (before) return before;
  const draft = drafted(spec);
  if (draft === null) return [];
  const pieces = withRows(draft.cutting.pieces, rowsOf({ ...draft, cloths: spec.cloths }));
  const now = arrange(drawPieces({ ...draft.cutting, pieces }, unit));
  drawn[unit].set(spec, now);
  return now;
};

/** A piece and its drawing, as they were last. */
interface Last {
  readonly piece: Piece;
  readonly allowances: Allowances;
  readonly unit: Unit;
  readonly drawing: PieceDrawing;
}

const last = new Map<string, Last>();

/** Most changes leave some pieces as they were, whose drawings are used again: the table then keeps their paint too. */
const drawPieces = ({ pieces, allowances }: Pattern, unit: Unit): PieceDrawing[] =>
  pieces.map((piece) => {
    const before = last.get(piece.id);
    if (before?.unit === unit && same(before.allowances, allowances) && sameShape(before.piece, piece)) {
      return before.drawing;
    }
    const drawing = drawWhole(piece, allowances, { unit, halves: false, dimensions: true, label: null });
    last.set(piece.id, { piece, allowances, unit, drawing });
    return drawing;
  });

/** The arithmetic of a piece is no part of its drawing. */
const sameShape = ({ figures: _, ...a }: Piece, { figures: __, ...b }: Piece): boolean => same(a, b);
