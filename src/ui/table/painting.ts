import { fetchStyle } from '../../caps/registry.ts';
import type { Spec } from '../../design/spec.ts';
import { type Box, boxUnion } from '../../geometry/box.ts';
import { add } from '../../geometry/point.ts';
import { drafted } from '../../state/derived.ts';
import type { Unit } from '../../units.ts';
import { asMet } from '../as-met.ts';
import { type InShort, inShort } from '../in-short.ts';
import { onTable } from '../on-table.ts';
import { seamOnTable } from '../seam-on-table.ts';
import type { Chalks } from './chalks.ts';
import { outlineHash } from './outline-hash.ts';
import type { Scene } from './painter.ts';
import { type PieceWords, pieceWords } from './piece-words.ts';
import { fitted, type Size, seesAll, type View } from './view.ts';

/** What is asked of the painter: what lies on the table, and how it is seen. */
export interface PaintOrder {
  readonly spec: Spec;
  /** What lay there before the change that is being made: shown as faint outlines. */
  readonly ghost: Spec | null;
  readonly unit: Unit;
  readonly chosen: string | null;
  readonly lit: string | null;
  /** The seam that is pointed at, by id. */
  readonly litSeam: string | null;
  readonly chalks: Chalks;
  readonly size: Size;
  /** Pixels of the screen to one of the page. */
  readonly ratio: number;
  /** Null where all pieces are to be framed anew. */
  readonly view: View | null;
  /** Whether the view is changed when pieces leave it. */
  readonly framed: boolean;
}

/** What a painting shows. */
export interface Shown {
  readonly view: View;
  /** Round all pieces, mm. */
  readonly bounds: Box;
  /** Marks the outlines: it changes when they do. */
  readonly outline: string;
  readonly pieces: readonly PieceWords[];
  readonly inShort: InShort | null;
}

export interface Painting extends Shown {
  readonly picture: ImageBitmap;
}

/** Pixels at the foot of the table that the pieces are not framed under: the caption and the buttons stand there. */
const FOOT = 52;

/** What there is to paint by an order, and what it will show. The styles are fetched first. */
export const toPaint = async (
  order: PaintOrder,
): Promise<{ readonly scene: Scene; readonly shown: Shown }> => {
  const { unit, chosen, lit, litSeam, chalks, size, ratio } = order;
  const spec = asMet(order.spec);
  const ghost = order.ghost && asMet(order.ghost);
  for (const { cap } of ghost ? [spec, ghost] : [spec]) await fetchStyle(cap.style);
  const placed = onTable(spec, unit);
  const draft = drafted(spec);
  const bounds = boxUnion(
    placed.map(({ drawing: { bounds: b }, at }) => ({ min: add(b.min, at), max: add(b.max, at) })),
  );
  const view = viewOf(order, bounds);
  return {
    scene: {
      placed,
      ghost: ghost ? onTable(ghost, unit) : [],
      seam: draft ? seamOnTable(draft.pattern, draft.cutting, placed, litSeam) : [],
      ...{ chosen, lit, chalks, view, size, ratio },
    },
    shown: {
      view,
      bounds,
      outline: outlineHash(placed),
      pieces: placed.map(({ drawing }) => pieceWords(drawing, unit)),
      inShort: draft && inShort(draft),
    },
  };
};

/** The first view frames all pieces; after that it stays put while they change, unless it is framed and they leave it. */
const viewOf = ({ view, framed, size }: PaintOrder, bounds: Box): View =>
  view && !(framed && !seesAll(view, size, bounds)) ? view : fitted(bounds, size, FOOT);
