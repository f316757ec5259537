import type { TextPicture } from './pen.ts';

/** Dots to the em: 600 to the inch at 9 point, and more than enough above. */
const EM = 96;
const PAD = 4;

/** The typefaces of the device, which know the scripts that ours does not. */
const fontOf = (bold: boolean): string => `${bold ? 600 : 400} ${EM}px system-ui, sans-serif`;

/** Words drawn by the device in its own letters; null where it cannot draw, as outside a browser. */
export const pictureOf = (text: string, bold: boolean): TextPicture | null => {
  const measured = measure(text, bold);
  if (measured === null) return null;
  const { width, above, below } = measured;
  const canvas = new OffscreenCanvas(width + 2 * PAD, above + below + 2 * PAD);
  const context = canvas.getContext('2d');
  if (context === null) return null;
  context.font = fontOf(bold);
  context.fillText(text, PAD, above + PAD);
  const pixels = context.getImageData(0, 0, canvas.width, canvas.height);
  return { pixels, width: canvas.width / EM, height: canvas.height / EM, below: (below + PAD) / EM };
};

/** How far the device's letters run, in ems; null where there are none. */
export const pictureWidth = (text: string, bold: boolean): number | null => {
  const measured = measure(text, bold);
  return measured === null ? null : (measured.width + 2 * PAD) / EM;
};

const measure = (
  text: string,
  bold: boolean,
): { readonly width: number; readonly above: number; readonly below: number } | null => {
  if (typeof OffscreenCanvas === 'undefined') return null;
  const context = new OffscreenCanvas(1, 1).getContext('2d');
  if (context === null) return null;
  context.font = fontOf(bold);
  const m = context.measureText(text);
  const width = Math.ceil(Math.max(m.width, m.actualBoundingBoxRight + m.actualBoundingBoxLeft));
  if (!(width > 0)) return null;
  return {
    width,
    above: Math.max(1, Math.ceil(m.actualBoundingBoxAscent)),
    below: Math.max(0, Math.ceil(m.actualBoundingBoxDescent)),
  };
};
