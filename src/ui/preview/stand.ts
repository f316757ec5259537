import type { Spec } from '../../design/spec.ts';
import type { Point3 } from '../../geometry/space.ts';
import type { WornWish } from '../../state/worn-wish.ts';
import { weaves } from '../../state/worn-wish.ts';
import { axesOf, type Gaze, looksInto, threeQuarter } from '../../worn/gaze.ts';
import { headMesh } from '../../worn/head-mesh.ts';
import { meshOf } from '../../worn/mesh.ts';
import { inFrame, notInFrame, paintInFrame } from '../frames.ts';
import { watchChalks } from '../table/chalks.ts';
import { listen } from '../table/gestures.ts';
import { extentOf, framed, ZOOMS } from './framing.ts';
import { readInks, rgbOf } from './inks.ts';
import { pieceSeenAt } from './pick.ts';
import type { SeamPath } from './ribbons.ts';
import { openScene, type Swatch } from './scene.ts';
import { lookedInto, seamOn, type WornNow, wornNow } from './worn-now.ts';

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
 * Keeps the cap on its head painted, at most once a frame and only when something has changed. Null where it cannot be:
 * without WebGL. `data-painted` of the root counts pictures and `data-cap` tells the cap last painted.
 */
export const openStand = (root: HTMLElement, canvas: HTMLCanvasElement, told: () => Told): Stand | null => {
  const scene = openScene(canvas);
  if (scene === null) return null;
  let [wanted, gaze, zoom]: [Wanted | null, Gaze, number] = [null, threeQuarter, 1];
  let size = { width: 0, height: 0 };
  let inks = readInks(root);
  let [asked, painted, lost] = [false, 0, false];
  let shown: { readonly worn: WornNow; readonly built: Built } | null = null;
  let seam: {
    readonly built: Built;
    readonly id: string | null;
    readonly lines: readonly SeamPath[];
  } | null = null;

  const ask = (): void => {
    if (!asked) paintInFrame(paint);
    asked = true;
  };
  /** Puts the cap on, where it is another than the one that stands there. */
  const build = (): void => {
    const worn = wanted && wornNow(wanted.spec, wanted.wish.tilted);
    if (worn === null) shown = null;
    else if (shown?.worn !== worn || (mayShowLining(gaze) && !shown.built.withLining))
      shown = { worn, built: built(worn, mayShowLining(gaze), shown?.built ?? null) };
  };
  const prepare = (): void => {
    build();
    ask();
  };
  const paint = (): void => {
    asked = false;
    if (!wanted || lost || !(size.width > 0 && size.height > 0)) return;
    build();
    if (!shown) return;
    const { worn, built: now } = shown;
    if (seam?.built !== now || seam.id !== wanted.litSeam) {
      const seen = now.withLining ? lookedInto(worn) : worn;
      seam = { built: now, id: wanted.litSeam, lines: seamOn(seen, wanted.litSeam) };
    }
    scene.paint({
      cloth: now.cloth,
      head: now.head,
      headShown: !looksInto(gaze),
      seam: seam.lines,
      lit: wanted.lit,
      chosen: wanted.chosen,
      gaze,
      frame: framed(now.extent, size.width, size.height, zoom),
      weave: weaves.indexOf(wanted.wish.weave),
      colour: rgbOf(wanted.wish.colour),
      swatch: wanted.swatch,
      lining: worn.isLined ? rgbOf(wanted.wish.lining) : null,
      liningSwatch: wanted.liningSwatch,
      inks,
      ...size,
    });
    painted += 1;
    root.dataset.painted = `${painted}`;
    root.dataset.cap = capMark(worn);
  };
  const look = (next: Gaze): void => {
    gaze = { aside: next.aside, above: Math.min(Math.PI / 2, Math.max(-Math.PI / 2, next.above)) };
    ask();
  };
  const zoomBy = (factor: number): void => {
    zoom = Math.min(ZOOMS.most, Math.max(ZOOMS.least, zoom * factor));
    ask();
  };
  const turn = (aside: number, above: number): void =>
    look({ aside: gaze.aside + aside, above: gaze.above + above });
  const pieceAt = (px: number, py: number): string | null => {
    if (!shown) return null;
    const axes = axesOf(gaze);
    const { centre, scale } = framed(shown.built.extent, size.width, size.height, zoom);
    const middle = (axis: Point3) => axis.x * centre.x + axis.y * centre.y + axis.z * centre.z;
    const x = middle(axes.right) + (px - size.width / 2) / scale;
    const y = middle(axes.up) - (py - size.height / 2) / scale;
    return pieceSeenAt(shown.built.cloth, axes, x, y);
  };
  const stopListening = listen(canvas, {
    // The near side follows the hand.
    pull: (right, down) => turn(right * PULL, down * PULL),
    zoom: (factor) => zoomBy(factor),
    tap: ({ x, y }) => told().choose(pieceAt(x, y)),
    hover: (at) => {
      const id = at && pieceAt(at.x, at.y);
      canvas.style.cursor = id === null ? 'grab' : 'pointer';
      if (id !== wanted?.lit) told().light(id);
    },
  });
  const resized = new ResizeObserver(([entry]) => {
    const { width, height } = entry!.contentRect;
    size = { width: Math.round(width), height: Math.round(height) };
    ask();
  });
  resized.observe(root);
  const stopWatching = watchChalks(() => {
    inks = readInks(root);
    ask();
  });
  const onLost = (event: Event): void => {
    // Only then may the browser give it back.
    event.preventDefault();
    lost = true;
    told().lost(true);
  };
  const onBack = (): void => told().lost(false);
  canvas.addEventListener('webglcontextlost', onLost);
  canvas.addEventListener('webglcontextrestored', onBack);
  return {
    show: (next) => {
      wanted = next;
      // A piece of work of its own, as drawing the pieces is: then both are painted in one frame.
      notInFrame(prepare);
      inFrame(prepare);
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
      notInFrame(prepare);
      notInFrame(paint);
      stopListening();
      stopWatching();
      resized.disconnect();
      canvas.removeEventListener('webglcontextlost', onLost);
      canvas.removeEventListener('webglcontextrestored', onBack);
      // What was taken away is gone with all that was in it.
      if (!lost) scene.close();
    },
  };
};

/** From level or from above a lining is hidden, and costs nothing. */
const mayShowLining = ({ above }: Gaze): boolean => above < -0.05;

/** What is painted of a cap that is worn. */
interface Built {
  readonly withLining: boolean;
  readonly cloth: ReturnType<typeof meshOf>;
  readonly head: ReturnType<typeof headMesh>;
  readonly headOf: WornNow['head'];
  readonly extent: ReturnType<typeof extentOf>;
}

const built = (worn: WornNow, withLining: boolean, before: Built | null): Built => {
  const { sheets, head, pattern, outer } = worn;
  const sameHead =
    before !== null &&
    before.headOf.top === head.top &&
    before.headOf.halfLength === head.halfLength &&
    before.headOf.halfBreadth === head.halfBreadth;
  return {
    withLining,
    cloth: meshOf(withLining ? lookedInto(worn).sheets : sheets, pattern.pieces, outer),
    head: sameHead ? before.head : headMesh(head),
    headOf: head,
    extent: extentOf(sheets, head),
  };
};

/** Tells one cap from another: the sum of its places, to a hundredth of a millimetre. */
const capMark = ({ sheets }: WornNow): string => {
  let sum = 0;
  for (const { at } of sheets) for (let k = 0; k < at.length; k++) sum += at[k]! * ((k % 97) + 1);
  return sum.toFixed(2);
};
