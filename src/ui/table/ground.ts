import { point } from '../../geometry/point.ts';
import { inches, type Unit } from '../../units.ts';
import type { Chalks } from './chalks.ts';
import { type Size, toTable, toWindow, type View } from './view.ts';

/** Closer than this (pixels) the marks would be a screen of grey: every second, fifth, tenth is left. */
const CLOSEST = 15;
const THINNED = [1, 2, 5, 10, 20, 50, 100];
/** Half the arm of a cross, and the side of a dot, pixels. */
const ARM = 3;
const DOT = 1.5;

/**
 * The paper under the pieces. It is painted aside and handed over whole: a canvas that is drawn on would be copied to
 * the screen with every frame, changed or not.
 */
export const openGround = (
  canvas: HTMLCanvasElement,
): ((size: Size, ratio: number, view: View, unit: Unit, chalks: Chalks) => void) => {
  const shown = canvas.getContext('bitmaprenderer')!;
  const aside = new OffscreenCanvas(1, 1);
  const context = aside.getContext('2d')!;
  return (size, ratio, view, unit, chalks) => {
    aside.width = Math.round(size.width * ratio);
    aside.height = Math.round(size.height * ratio);
    paintGround(context, size, ratio, view, unit, chalks);
    shown.transferFromImageBitmap(aside.transferToImageBitmap());
  };
};

/** Pattern paper: a mark every centimetre or half inch, dots and crosses by turns, fewer where they would crowd. */
const paintGround = (
  context: OffscreenCanvasRenderingContext2D,
  size: Size,
  ratio: number,
  view: View,
  unit: Unit,
  { dot, paper }: Chalks,
): void => {
  context.setTransform(ratio, 0, 0, ratio, 0, 0);
  context.fillStyle = paper;
  context.fillRect(0, 0, size.width, size.height);
  const base = unit === 'cm' ? 10 : inches(1 / 2);
  const step = base * (THINNED.find((n) => base * n * view.scale >= CLOSEST) ?? 200);
  const low = toTable(view, size, point(0, size.height));
  const high = toTable(view, size, point(size.width, 0));
  context.fillStyle = dot;
  const sharp = (n: number): number => Math.round(n * ratio) / ratio;
  for (let j = Math.floor(low.y / step); j * step <= high.y; j++) {
    for (let i = Math.floor(low.x / step); i * step <= high.x; i++) {
      const at = toWindow(view, size, point(i * step, j * step));
      const [x, y] = [sharp(at.x), sharp(at.y)];
      if ((i + j) % 2 === 0) context.fillRect(x - DOT / 2, y - DOT / 2, DOT, DOT);
      else {
        context.fillRect(x - ARM, y - 0.5, 2 * ARM, 1);
        context.fillRect(x - 0.5, y - ARM, 1, 2 * ARM);
      }
    }
  }
};
