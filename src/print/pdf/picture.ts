import type { TextMark } from '../../drawing/drawing.ts';
import { textStyles } from '../../drawing/roles.ts';
import type { Sheet } from '../sheet.ts';
import { type Face, isCovered } from './face.ts';
import { setText } from './fractions.ts';
import { type Pictures, pictureKey, type TextPicture } from './pictures.ts';

/** Dots to the em, which is 600 to the inch at 11 point. */
const EM = 92;
const PAD = 4;

/** Draws the words that neither cut of the typeface has, in the letters of the device. None outside a browser. */
export const picturesFor = async (sheets: readonly Sheet[], regular: Face, bold: Face): Promise<Pictures> => {
  const pictures = new Map<string, TextPicture>();
  if (typeof OffscreenCanvas === 'undefined') return pictures;
  const texts = sheets.flatMap((s) => s.marks.filter((m): m is TextMark => m.kind === 'text'));
  for (const { role, lines } of texts) {
    const isBold = textStyles[role].bold;
    for (const text of lines.map(setText)) {
      const key = pictureKey(text, isBold);
      if (pictures.has(key) || isCovered(isBold ? bold : regular, text)) continue;
      const picture = await pictureOf(text, isBold);
      if (picture !== null) pictures.set(key, picture);
    }
  }
  return pictures;
};

const pictureOf = async (text: string, bold: boolean): Promise<TextPicture | null> => {
  const font = `${bold ? 600 : 400} ${EM}px system-ui, sans-serif`;
  const size = measure(text, font);
  if (size === null) return null;
  const canvas = new OffscreenCanvas(size.width + 2 * PAD, size.above + size.below + 2 * PAD);
  const context = canvas.getContext('2d');
  if (context === null) return null;
  context.font = font;
  context.fillText(text, PAD - size.left, size.above + PAD);
  const blob = await canvas.convertToBlob({ type: 'image/png' });
  const png = new Uint8Array(await blob.arrayBuffer());
  return { png, width: canvas.width / EM, height: canvas.height / EM, below: (size.below + PAD) / EM };
};

/** What a text covers, in dots: from its start to the right, above and below its baseline; `left` of it, negative. */
const measure = (
  text: string,
  font: string,
): {
  readonly left: number;
  readonly width: number;
  readonly above: number;
  readonly below: number;
} | null => {
  const context = new OffscreenCanvas(1, 1).getContext('2d');
  if (context === null) return null;
  context.font = font;
  const m = context.measureText(text);
  const left = Math.min(0, -Math.ceil(m.actualBoundingBoxLeft));
  const width = Math.ceil(Math.max(m.width, m.actualBoundingBoxRight)) - left;
  if (!(width > 0)) return null;
  const above = Math.max(1, Math.ceil(m.actualBoundingBoxAscent));
  return { left, width, above, below: Math.max(0, Math.ceil(m.actualBoundingBoxDescent)) };
};
