import type { Placed } from '../../src/drawing/arrange.ts';
import type { LineMark, Mark, TextMark } from '../../src/drawing/drawing.ts';
import { pathData, svgNumber } from '../../src/drawing/path-data.ts';
import { lineStyles, textStyles } from '../../src/drawing/roles.ts';
import { placedLines } from '../../src/drawing/text-block.ts';
import { boxGrown, boxHeight, boxUnion, boxWidth } from '../../src/geometry/box.ts';
import { add, type Point } from '../../src/geometry/point.ts';

const MARGIN = 10;

/** Placed drawings as one SVG document at true scale: a user unit is a millimetre, a group is a piece, and the title says what is shown. */
export const toSvg = (placed: readonly Placed[], title: string): string => {
  const boxes = placed.map(({ drawing: { bounds }, at }) => ({
    min: add(bounds.min, at),
    max: add(bounds.max, at),
  }));
  const box = boxGrown(boxUnion(boxes), MARGIN);
  const [width, height] = [svgNumber(boxWidth(box)), svgNumber(boxHeight(box))];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="${svgNumber(box.min.x)} ${svgNumber(-box.max.y)} ${width} ${height}" font-family="'Source Sans 3 Variable', 'Source Sans 3', sans-serif" stroke-linejoin="round">`,
    `<title>${escaped(title)}</title>`,
    ...placed.map(pieceGroup),
    '</svg>',
    '',
  ].join('\n');
};

const pieceGroup = ({ drawing, at }: Placed): string =>
  [
    `<g id="${escaped(drawing.id)}" transform="translate(${xy(at)})">`,
    `<title>${escaped(drawing.name)}</title>`,
    ...drawing.marks.map(markElement),
    '</g>',
  ].join('\n');

const markElement = (mark: Mark): string => (mark.kind === 'line' ? lineElement(mark) : textElement(mark));

const lineElement = ({ role, path, filled, ground }: LineMark): string => {
  const { weight, dash } = lineStyles[role];
  const dashes = dash.length > 0 ? ` stroke-dasharray="${dash.join(' ')}"` : '';
  const fill = filled ? '#000' : ground || role === 'bare' ? '#fff' : 'none';
  return `<path class="${role}" d="${pathData(path)}" fill="${fill}" stroke="#000" stroke-width="${weight}"${dashes}/>`;
};

const textElement = (mark: TextMark): string => {
  const { bold } = textStyles[mark.role];
  const turn = (at: Point): string =>
    mark.angle === 0 ? '' : ` transform="rotate(${svgNumber(degrees(-mark.angle))} ${xy(at, ' ')})"`;
  const lines = placedLines(mark).map(({ text, at }) => {
    const place = `x="${svgNumber(at.x)}" y="${svgNumber(-at.y)}"${turn(at)}`;
    return `<text class="${mark.role}" ${place} font-size="${svgNumber(mark.size)}" text-anchor="${mark.align}"${bold ? ' font-weight="600"' : ''}>${escaped(text)}</text>`;
  });
  return lines.join('\n');
};

const degrees = (radians: number): number => (radians * 180) / Math.PI;
const xy = (p: Point, between = ','): string => `${svgNumber(p.x)}${between}${svgNumber(-p.y)}`;
const escaped = (text: string): string =>
  text.replace(/[&<>"]/g, (c) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[c]!);
