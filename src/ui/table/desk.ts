import type { Placed } from '../../drawing/arrange.ts';
import { type Box, boxUnion } from '../../geometry/box.ts';
import { contains } from '../../geometry/inside.ts';
import { add, type Point, point, subtract } from '../../geometry/point.ts';
import type { Unit } from '../../units.ts';
import { notInFrame, paintInFrame } from '../frames.ts';
import { type Chalks, readChalks, watchChalks } from './chalks.ts';
import { listen } from './gestures.ts';
import { openGround } from './ground.ts';
import type { Stroke } from './keys.ts';
import { outlineHash } from './outline-hash.ts';
import { openPainter, type Scene } from './painter.ts';
import type { Lying } from './shapes.ts';
import { fitted, kept, pulled, type Size, seesAll, toTable, type View, zoomed } from './view.ts';

/** What the page wants on the table. */
export interface Wanted {
  /** What kind of thing lies there: another one is framed anew. */
  readonly subject: string;
  readonly placed: readonly Placed[];
  readonly ghost: readonly Placed[];
  readonly unit: Unit;
  readonly chosen: string | null;
  readonly lit: string | null;
  /** Both sides of a seam that is pointed at. */
  readonly seam: readonly Lying[];
}

/** What the table tells the page: which piece, or none. */
export interface Told {
  readonly choose: (id: string | null) => void;
  readonly light: (id: string | null) => void;
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

/** Pixels at the foot of the table that the pieces are not framed under: the caption and the buttons stand there. */
const FOOT = 52;

/**
 * Keeps the table painted: at most once a frame, and only what has changed. The first view frames all pieces; after
 * that it stays put while they change, unless they leave it; once the user has moved it, it is theirs until they fit it again.
 */
export const openDesk = ({ root, surface, ground, pieces }: DeskElements, told: () => Told): Desk => {
  const painter = openPainter(pieces);
  const paintGround = openGround(ground);
  let wanted: Wanted | null = null;
  let size: Size = { width: 0, height: 0 };
  let view: View | null = null;
  let framed = true;
  let another = false;
  let chalks: Chalks = readChalks(root);
  let asked = false;
  let painted = 0;
  let grounded: readonly unknown[] = [];

  const ask = (): void => {
    if (!asked) paintInFrame(paint);
    asked = true;
  };
  const bounds = (): Box =>
    boxUnion(
      (wanted?.placed ?? []).map(({ drawing: { bounds: b }, at }) => ({
        min: add(b.min, at),
        max: add(b.max, at),
      })),
    );
  const frameView = (): View => {
    const box = bounds();
    if (!view || (framed && !seesAll(view, size, box))) view = fitted(box, size, FOOT);
    return view;
  };
  /** What there is to paint; nothing before there is something to show, and a place to show it in. */
  const scene = (): Scene | null =>
    wanted && size.width > 0 && size.height > 0 ? { ...wanted, chalks, view: frameView(), size } : null;
  const paint = (): void => {
    asked = false;
    const now = scene();
    if (!now || !wanted) return;
    const ratio = window.devicePixelRatio || 1;
    const asks = [now.view, wanted.unit, chalks, size, ratio];
    if (asks.some((ask, i) => ask !== grounded[i])) {
      paintGround(size, ratio, now.view, wanted.unit, chalks);
      grounded = asks;
    }
    painter.paint(now);
    painted += 1;
    root.dataset.painted = `${painted}`;
    root.dataset.outline = outlineHash(now.placed);
  };
  const look = (next: View): void => {
    view = kept(next, bounds());
    framed = false;
    ask();
  };
  const middle = (): Point => point(size.width / 2, size.height / 2);
  const pieceAt = (px: Point): string | null => {
    if (!wanted || !view) return null;
    const spot = toTable(view, size, px);
    // The last painted lies on top.
    const hit = [...wanted.placed]
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
    tap: (at) => told().choose(pieceAt(at)),
    hover: (at) => {
      const id = at && pieceAt(at);
      surface.style.cursor = id === null ? 'grab' : 'pointer';
      if (id !== wanted?.lit) told().light(id);
    },
  });
  const resized = new ResizeObserver(([entry]) => {
    const { width, height } = entry!.contentRect;
    size = { width: Math.round(width), height: Math.round(height) };
    if (framed) view = null;
    ask();
  });
  resized.observe(surface);
  const stopWatching = watchChalks(() => {
    chalks = readChalks(root);
    ask();
  });
  return {
    show: (next) => {
      if (wanted && next.subject !== wanted.subject) another = true;
      // The pieces of another subject come a moment after its name.
      if (another && next.placed !== wanted?.placed) {
        [another, framed, view] = [false, true, null];
      }
      wanted = next;
      // Laid now and painted in its turn: each takes a good part of a frame.
      const now = scene();
      if (now) painter.lay(now);
      ask();
    },
    stroke: (stroke) => {
      if (stroke.kind === 'fit') frameAll();
      else if (stroke.kind === 'let go') told().choose(null);
      else if (view && stroke.kind === 'zoom') look(zoomed(view, size, stroke.factor, middle()));
      else if (view && stroke.kind === 'pull') look(pulled(view, stroke.right, stroke.down));
    },
    close: () => {
      notInFrame(paint);
      stopListening();
      stopWatching();
      resized.disconnect();
      painter.close();
    },
  };
};
