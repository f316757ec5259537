import { type Box, boxUnion } from '../../geometry/box.ts';
import { contains } from '../../geometry/inside.ts';
import { type Point, point, subtract } from '../../geometry/point.ts';
import type { InShort } from '../in-short.ts';
import { openMaker } from '../maker.ts';
import { onTable } from '../on-table.ts';
import { type Chalks, readChalks, watchChalks } from './chalks.ts';
import { listen } from './gestures.ts';
import { openGround } from './ground.ts';
import type { Stroke } from './keys.ts';
import { startPainter } from './painter-beside.ts';
import type { Painting, PaintOrder } from './painting.ts';
import { named, type PieceWords, pieceWords } from './piece-words.ts';
import { kept, pulled, type Size, toTable, type View, zoomed } from './view.ts';

/** What the page wants on the table. */
export type Wanted = Pick<PaintOrder, 'spec' | 'ghost' | 'unit' | 'chosen' | 'lit' | 'litSeam'>;

/** What the table tells the page: which piece, or none. */
export interface Told {
  readonly choose: (id: string | null) => void;
  readonly light: (id: string | null) => void;
  /** The pieces that the picture shows, and the one that it shows lit or chosen; all pieces, where there is no picture. */
  readonly pieces: (pieces: readonly PieceWords[], named: PieceWords | null) => void;
  /** What there is to say of the cap that the picture shows; null while nothing is painted. */
  readonly inShort: (cap: InShort | null) => void;
  /** The first picture is there. */
  readonly ready: () => void;
  /** Nothing can be painted. */
  readonly failed: () => void;
}

export interface Desk {
  readonly show: (wanted: Wanted) => void;
  readonly stroke: (stroke: Stroke) => void;
  readonly close: () => void;
}

/** The elements that a table is made of: the whole, and two canvases one above the other. */
export interface DeskElements {
  readonly root: HTMLElement;
  readonly surface: HTMLElement;
  readonly ground: HTMLCanvasElement;
  readonly pieces: HTMLCanvasElement;
}

const isOpen = ({ width, height }: Size): boolean => width > 0 && height > 0;

/**
 * Keeps the table painted. The painter works beside the page: it is given an order, and what changes meanwhile is the next.
 * The first view frames all pieces; after that it stays put while they change, unless they leave it; once the user has
 * moved it, it is theirs until they fit it again.
 */
export const openDesk = ({ root, surface, ground, pieces }: DeskElements, told: Told): Desk => {
  const showPieces = pieces.getContext('bitmaprenderer')!;
  const paintGround = openGround(ground);
  let wanted: Wanted | null = null;
  let size: Size = { width: 0, height: 0 };
  let view: View | null = null;
  let framed = true;
  let chalks: Chalks = readChalks(root);
  let extent: Box = boxUnion([]);
  let painted = 0;
  let hasFailed = false;
  let grounded: readonly unknown[] = [];

  /** What there is to paint; nothing before there is something to show, and a place to show it in. */
  const order = (): PaintOrder | null =>
    wanted && isOpen(size)
      ? { ...wanted, chalks, size, ratio: window.devicePixelRatio || 1, view, framed }
      : null;
  const show = (
    { picture, view: seen, bounds, outline, pieces: words, inShort }: Painting,
    asked: PaintOrder,
  ): void => {
    // Has the hand moved the table meanwhile? Then it stays where the hand moved it.
    if (asked.view === view && asked.framed === framed) view = seen;
    const asks = [
      seen.scale,
      seen.centre.x,
      seen.centre.y,
      asked.unit,
      asked.chalks,
      asked.size,
      asked.ratio,
    ];
    if (asks.some((one, i) => one !== grounded[i])) {
      paintGround(asked.size, asked.ratio, seen, asked.unit, asked.chalks);
      grounded = asks;
    }
    showPieces.transferFromImageBitmap(picture);
    extent = bounds;
    painted += 1;
    root.dataset.painted = `${painted}`;
    root.dataset.outline = outline;
    told.pieces(words, named(words, asked));
    told.inShort(isOpen(size) ? inShort : null);
    if (painted === 1) told.ready();
  };
  /** What cannot be painted can still be said. */
  const list = (): void => {
    if (wanted === null) return;
    const { spec, unit } = wanted;
    told.pieces(
      onTable(spec, unit).map(({ drawing }) => pieceWords(drawing, unit)),
      null,
    );
  };
  const failed = (): void => {
    hasFailed = true;
    list();
    told.inShort(null);
    told.failed();
  };
  const painter = openMaker(startPainter(), { order, show, failed });
  const { ask } = painter;
  const look = (next: View): void => {
    view = kept(next, extent);
    framed = false;
    ask();
  };
  const middle = (): Point => point(size.width / 2, size.height / 2);
  const pieceAt = (px: Point): string | null => {
    if (!wanted || !view) return null;
    const spot = toTable(view, size, px);
    // The last painted lies on top.
    const hit = [...onTable(wanted.spec, wanted.unit)]
      .reverse()
      .find(({ drawing, at }) => contains(drawing.silhouette, subtract(spot, at)));
    return hit?.drawing.id ?? null;
  };
  const frameAll = (): void => {
    view = null;
    framed = true;
    ask();
  };
  const stopListening = listen(surface, {
    pull: (right, down) => view && look(pulled(view, right, down)),
    zoom: (factor, at) => view && look(zoomed(view, size, factor, at)),
    tap: (at) => told.choose(pieceAt(at)),
    hover: (at) => {
      const id = at && pieceAt(at);
      surface.style.cursor = id === null ? 'grab' : 'pointer';
      if (id !== wanted?.lit) told.light(id);
    },
  });
  const resized = new ResizeObserver(([entry]) => {
    const { width, height } = entry!.contentRect;
    size = { width: Math.round(width), height: Math.round(height) };
    if (framed) view = null;
    if (!isOpen(size)) told.inShort(null);
    ask();
  });
  resized.observe(surface);
  const stopWatching = watchChalks(() => {
    chalks = readChalks(root);
    ask();
  });
  return {
    show: (next) => {
      // Another style is framed anew.
      if (wanted && next.spec.cap.style !== wanted.spec.cap.style) [framed, view] = [true, null];
      wanted = next;
      if (hasFailed) list();
      else ask();
    },
    stroke: (stroke) => {
      if (stroke.kind === 'fit') frameAll();
      else if (stroke.kind === 'let go') told.choose(null);
      else if (view && stroke.kind === 'zoom') look(zoomed(view, size, stroke.factor, middle()));
      else if (view && stroke.kind === 'pull') look(pulled(view, stroke.right, stroke.down));
    },
    close: () => {
      stopListening();
      stopWatching();
      resized.disconnect();
      painter.close();
      told.inShort(null);
    },
  };
};
