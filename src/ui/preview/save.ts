import { calledName } from '../../design/called-name.ts';
import type { Spec } from '../../design/spec.ts';
import { views } from '../../worn/gaze.ts';
import { fileName, hand } from '../hand.ts';
import { drawingData } from './drawing-data.ts';
import { drawnFrom } from './drawn-from.ts';
import { wornNow } from './worn-now.ts';

/** Hands over the picture as it is on the screen. */
export const savePicture = (picture: HTMLCanvasElement, name: string): void =>
  picture.toBlob((blob) => {
    if (blob) hand(blob, `${fileName(name)}.png`);
  }, 'image/png');

/** Hands over the line drawing of all the views, in millimetres at a third of the true size. */
export const saveDrawing = (spec: Spec, tilted: boolean): void => {
  const worn = wornNow(spec, tilted);
  if (worn === null) return;
  const drawn = Object.values(views).map((gaze) => drawingData(drawnFrom(worn, gaze)));
  hand(
    new Blob([sheetOf(drawn, calledName(spec.cap.name))], { type: 'image/svg+xml' }),
    `${fileName(spec.cap.name)}.svg`,
  );
};

const GAP = 30;
const SCALE = 1 / 3;
const widths = { head: 0.8, shade: 0.6, edge: 1.4 } as const;

/** Views in a row, upright on one line where they are level. */
const sheetOf = (drawn: readonly ReturnType<typeof drawingData>[], name: string): string => {
  const high = Math.max(...drawn.map(({ middle, height }) => middle.y + height / 2));
  const low = Math.min(...drawn.map(({ middle, height }) => middle.y - height / 2));
  let reached = GAP;
  const views = drawn.map(({ middle, width, paths }) => {
    const shift = reached + width / 2 - middle.x;
    reached += width + GAP;
    const lines = paths.map(
      ({ role, d }) =>
        `<path stroke-width="${widths[role]}"${role === 'head' ? ' stroke="#46525b"' : ''} d="${d}"/>`,
    );
    return `<g transform="translate(${shift.toFixed(1)} ${(high + GAP).toFixed(1)})">${lines.join('')}</g>`;
  });
  const [w, h] = [reached, high - low + 2 * GAP];
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${(w * SCALE).toFixed(1)}mm" height="${(h * SCALE).toFixed(1)}mm" viewBox="0 0 ${w.toFixed(1)} ${h.toFixed(1)}"><title>${escaped(name)}</title><g fill="none" stroke="#1e2a33" stroke-linecap="round" stroke-linejoin="round">${views.join('')}</g></svg>\n`;
};

const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);
