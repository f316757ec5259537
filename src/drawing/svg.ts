import { boxGrown, boxHeight, boxUnion, boxWidth } from '../geometry/box.ts';
import type { Path } from '../geometry/path.ts';
import { add, heading, type Point, scale } from '../geometry/point.ts';
import { walk } from '../geometry/walk.ts';
import type { Placed } from './arrange.ts';
import type { LineMark, Mark, TextMark } from './drawing.ts';
import { lineStyles, textStyles } from './roles.ts';
import { placedLines } from './text-block.ts';

const MARGIN = 10;

/** Placed drawings as one SVG document at true scale: a user unit is a millimetre, a group is a piece, and the title says what is shown. */
export const toSvg = (placed: readonly Placed[], title: string): string => {
  const boxes = placed.map(({ drawing: { bounds }, at }) => ({
    min: add(bounds.min, at),
    max: add(bounds.max, at),
  }));
  const box = boxGrown(boxUnion(boxes), MARGIN);
  const [width, height] = [number(boxWidth(box)), number(boxHeight(box))];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="${number(box.min.x)} ${number(-box.max.y)} ${width} ${height}" font-family="'Source Sans 3 Variable', 'Source Sans 3', sans-serif" stroke-linejoin="round">`,
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

const lineElement = ({ role, path, filled }: LineMark): string => {
  const { weight, dash } = lineStyles[role];
  const dashes = dash.length > 0 ? ` stroke-dasharray="${dash.join(' ')}"` : '';
  const fill = filled ? '#000' : 'none';
  return `<path class="${role}" d="${pathData(path)}" fill="${fill}" stroke="#000" stroke-width="${weight}"${dashes}/>`;
};

const textElement = (mark: TextMark): string => {
  const { bold } = textStyles[mark.role];
  const turn = (at: Point): string =>
    mark.angle === 0 ? '' : ` transform="rotate(${number(degrees(-mark.angle))} ${xy(at, ' ')})"`;
  const lines = placedLines(mark).map(({ text, at }) => {
    const place = `x="${number(at.x)}" y="${number(-at.y)}"${turn(at)}`;
    return `<text class="${mark.role}" ${place} font-size="${number(mark.size)}" text-anchor="${mark.align}"${bold ? ' font-weight="600"' : ''}>${escaped(text)}</text>`;
  });
  return lines.join('\n');
};

/** A path in SVG's own verbs, y down: arcs stay arcs, in halves where they pass a half turn. */
export const pathData = (path: Path): string => {
  const verbs: string[] = [];
  walk(path, {
    moveTo: (p) => verbs.push(`M${xy(p)}`),
    lineTo: (p) => verbs.push(`L${xy(p)}`),
    cubicTo: (a, b, p) => verbs.push(`C${xy(a)} ${xy(b)} ${xy(p)}`),
    arcTo: (centre, r, start, sweep, to) => {
      const half = (end: Point): number =>
        verbs.push(`A${number(r)} ${number(r)} 0 0 ${sweep > 0 ? 0 : 1} ${xy(end)}`);
      if (Math.abs(sweep) > 3) half(add(centre, scale(heading(start + sweep / 2), r)));
      half(to);
    },
    close: () => verbs.push('Z'),
  });
  return verbs.join('');
};

const degrees = (radians: number): number => (radians * 180) / Math.PI;
/** A thousandth of a millimetre, without a minus before nought. */
const number = (n: number): string => `${Number(n.toFixed(3)) + 0}`;
const xy = (p: Point, between = ','): string => `${number(p.x)}${between}${number(-p.y)}`;
const escaped = (text: string): string =>
  text.replace(/[&<>"]/g, (c) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[c]!);
