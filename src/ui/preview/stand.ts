import type { Spec } from '../../design/spec.ts';
import type { Point3 } from '../../geometry/space.ts';
import type { WornWish } from '../../state/worn-wish.ts';
import { weaves } from '../../state/worn-wish.ts';
import { axesOf, type Gaze, looksInto, threeQuarter } from '../../worn/gaze.ts';
import { notInFrame, paintInFrame } from '../frames.ts';
import { openMaker } from '../maker.ts';
import { watchChalks } from '../table/chalks.ts';
import { listen } from '../table/gestures.ts';
import type { Dressed, DressOrder, HeadMesh } from './dressing.ts';
import dressingWorker from './dressing.worker.ts?beside';
import { framed, ZOOMS } from './framing.ts';
import { readInks, rgbOf } from './inks.ts';
import { pieceSeenAt } from './pick.ts';
import { openScene, type Swatch } from './scene.ts';

/** What the page wants to see. */
export interface Wanted {
  readonly spec: Spec;
  readonly wish: WornWish;
  readonly swatch: Swatch | null;
  readonly liningSwatch: Swatch | null;
  readonly lit: string | null;
  readonly chosen: string | null;
  readonly litSeam: string | null;
}

/** What the stand tells the page. */
export interface Told {
  readonly choose: (id: string | null) => void;
  readonly light: (id: string | null) => void;
  /** The picture cannot be painted any more; or it can be again. */
  readonly lost: (isLost: boolean) => void;
  /** There is nobody to put caps on heads. */
  readonly failed: () => void;
}

export interface Stand {
  readonly show: (wanted: Wanted) => void;
  readonly look: (gaze: Gaze) => void;
  readonly turn: (aside: number, above: number) => void;
  readonly zoom: (factor: number) => void;
  readonly reset: () => void;
  /** The picture as it is now, on paper. */
  readonly picture: () => HTMLCanvasElement;
  readonly close: () => void;
}

/** Radians for each pixel that a hand pulls. */
const PULL = 0.009;

/**
 * Keeps the cap on its head painted on a canvas of its own in `root`, at most once a frame and only when something has changed. Null where it cannot be:
 * without WebGL. `data-painted` of the root counts pictures and `data-cap` tells the cap last painted.
 */
export const openStand = (root: HTMLElement, told: Told): Stand | null => {
  // One that was closed has given its context back for good.
  const canvas = document.createElement('canvas');
  const scene = openScene(canvas);
  if (scene === null) return null;
  root.prepend(canvas);
  let [wanted, gaze, zoom]: [Wanted | null, Gaze, number] = [null, threeQuarter, 1];
  let size = { width: 0, height: 0 };
  let inks = readInks(root);
  let [asked, painted, lost] = [false, 0, false];
  let dressed: Dressed | null = null;
  let head: HeadMesh | null = null;

  const repaint = (): void => {
    if (!asked) paintInFrame(paint);
    asked = true;
  };
  const paint = (): void => {
    asked = false;
    if (!wanted || lost || !(size.width > 0 && size.height > 0) || dressed === null || head === null) return;
    const { cloth, extent, seam, isLined, mark } = dressed;
    scene.paint({
      cloth,
      head,
      headShown: !looksInto(gaze),
      seam,
      lit: wanted.lit,
      chosen: wanted.chosen,
      gaze,
      frame: framed(extent, size.width, size.height, zoom),
      weave: weaves.indexOf(wanted.wish.weave),
      colour: rgbOf(wanted.wish.colour),
      swatch: wanted.swatch,
      lining: isLined ? rgbOf(wanted.wish.lining) : null,
      liningSwatch: wanted.liningSwatch,
      inks,
      ...size,
    });
    painted += 1;
    root.dataset.painted = `${painted}`;
    root.dataset.cap = mark;
  };
  const order = (): DressOrder | null =>
    wanted && {
      spec: wanted.spec,
      tilted: wanted.wish.tilted,
      withLining: mayShowLining(gaze),
      litSeam: wanted.litSeam,
    };
  const dresser = openMaker(new Worker(dressingWorker, { type: 'module' }), {
    order,
    show: (next: Dressed | null) => {
      dressed = next;
      head = next?.head ?? head;
      paint();
      askForLining();
    },
    failed: told.failed,
  });
  /** It may be looked at from below since it was asked for. */
  const askForLining = (): void => {
    if (mayShowLining(gaze) && dressed?.withLining === false) dresser.ask();
  };
  const look = (next: Gaze): void => {
    gaze = { aside: next.aside, above: Math.min(Math.PI / 2, Math.max(-Math.PI / 2, next.above)) };
    askForLining();
    repaint();
  };
  const zoomBy = (factor: number): void => {
    zoom = Math.min(ZOOMS.most, Math.max(ZOOMS.least, zoom * factor));
    repaint();
  };
  const turn = (aside: number, above: number): void =>
    look({ aside: gaze.aside + aside, above: gaze.above + above });
  const pieceAt = (px: number, py: number): string | null => {
    if (dressed === null) return null;
    const axes = axesOf(gaze);
    const { centre, scale } = framed(dressed.extent, size.width, size.height, zoom);
    const middle = (axis: Point3) => axis.x * centre.x + axis.y * centre.y + axis.z * centre.z;
    const x = middle(axes.right) + (px - size.width / 2) / scale;
    const y = middle(axes.up) - (py - size.height / 2) / scale;
    return pieceSeenAt(dressed.cloth, axes, x, y);
  };
  const stopListening = listen(canvas, {
    // The near side follows the hand.
    pull: (right, down) => turn(right * PULL, down * PULL),
    zoom: (factor) => zoomBy(factor),
    tap: ({ x, y }) => told.choose(pieceAt(x, y)),
    hover: (at) => {
      const id = at && pieceAt(at.x, at.y);
      canvas.style.cursor = id === null ? 'grab' : 'pointer';
      if (id !== wanted?.lit) told.light(id);
    },
  });
  const resized = new ResizeObserver(([entry]) => {
    const { width, height } = entry!.contentRect;
    size = { width: Math.round(width), height: Math.round(height) };
    repaint();
  });
  resized.observe(root);
  const stopWatching = watchChalks(() => {
    inks = readInks(root);
    repaint();
  });
  const onLost = (event: Event): void => {
    // Only then may the browser give it back.
    event.preventDefault();
    lost = true;
    told.lost(true);
  };
  const onBack = (): void => told.lost(false);
  canvas.addEventListener('webglcontextlost', onLost);
  canvas.addEventListener('webglcontextrestored', onBack);
  return {
    show: (next) => {
      const before = wanted;
      wanted = next;
      const isAnother =
        before?.spec !== next.spec ||
        before.wish.tilted !== next.wish.tilted ||
        before.litSeam !== next.litSeam;
      if (isAnother) dresser.ask();
      else repaint();
    },
    look,
    turn,
    zoom: zoomBy,
    reset: () => {
      zoom = 1;
      look(threeQuarter);
    },
    picture: () => {
      paint();
      const copy = document.createElement('canvas');
      [copy.width, copy.height] = [canvas.width, canvas.height];
      const pen = copy.getContext('2d')!;
      pen.fillStyle = `rgb(${inks.paper.map((part) => Math.round(part * 255)).join(' ')})`;
      pen.fillRect(0, 0, copy.width, copy.height);
      pen.drawImage(canvas, 0, 0);
      return copy;
    },
    close: () => {
      dresser.close();
      notInFrame(paint);
      stopListening();
      stopWatching();
      resized.disconnect();
      canvas.removeEventListener('webglcontextlost', onLost);
      canvas.removeEventListener('webglcontextrestored', onBack);
      // What was taken away is gone with all that was in it.
      if (!lost) scene.close();
      canvas.remove();
    },
  };
};

/** From level or from above a lining is hidden, and costs nothing. */
const mayShowLining = ({ above }: Gaze): boolean => above < -0.05;
