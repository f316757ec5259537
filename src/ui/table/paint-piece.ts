import paper from 'paper/dist/paper-core';
import type { LineMark, PieceDrawing, TextMark, TextRole, Tone } from '../../drawing/drawing.ts';
import { lineStyles, textStyles } from '../../drawing/roles.ts';
import { placedLines } from '../../drawing/text-block.ts';
import type { Chalks } from './chalks.ts';
import { enlarged } from './enlarged.ts';
import { paperPath } from './paper-path.ts';
import { penScale, screenSize } from './screen-size.ts';

/** The two things that a piece's look hangs on besides itself. */
export interface Look {
  readonly chalks: Chalks;
  /** Pixels per mm. */
  readonly scale: number;
}

/** No line is thinner than this, pixels. */
const HAIRLINE = 0.7;
/** Width in pixels of the rim of paper round a text that is enlarged. */
const RIM = 5;

const colour = (tone: Tone, chalks: Chalks): string => chalks[tone];

/**
 * The lines of a drawing as Paper's items, unstyled, with the mark that sets their look. Lines of one look are one item:
 * a cap has some two hundred lines, and each item costs a stroke of its own while a slider moves.
 */
export const lineItems = (drawing: PieceDrawing): [paper.PathItem, LineMark][] => {
  const alike = new Map<string, LineMark[]>();
  for (const mark of drawing.marks) {
    if (mark.kind !== 'line') continue;
    const look = `${mark.role} ${mark.tone ?? ''} ${mark.filled ?? false}`;
    const marks = alike.get(look);
    if (marks) marks.push(mark);
    else alike.set(look, [mark]);
  }
  return [...alike.values()].map((marks) => {
    const paths = marks.map(({ path }) => paperPath(path));
    const item = paths.length === 1 ? paths[0]! : new paper.CompoundPath({ children: paths, insert: false });
    return [item, marks[0]!];
  });
};

/** Gives a line the weight, dash and colour of its role: no thinner on the screen than can be seen. */
export const inkLine = (item: paper.PathItem, mark: LineMark, { chalks, scale }: Look): void => {
  const { weight, dash, tone } = lineStyles[mark.role];
  const pen = penScale(scale) / scale;
  const ink = colour(mark.tone ?? tone, chalks);
  item.strokeColor = new paper.Color(ink);
  item.strokeWidth = Math.max(weight * pen, HAIRLINE / scale);
  item.dashArray = dash.map((d) => d * pen);
  if (mark.filled) item.fillColor = new paper.Color(ink);
};

/** The drawing's texts as they are shown at this scale: true size close up, names and figures enlarged from afar. */
export const textItems = (
  drawing: PieceDrawing,
  look: Look,
  wanted: (role: TextRole) => boolean,
): paper.PointText[] =>
  drawing.marks.flatMap((mark) =>
    mark.kind === 'text' && wanted(mark.role) ? textItem(mark, drawing, look) : [],
  );

const textItem = (mark: TextMark, drawing: PieceDrawing, { chalks, scale }: Look): paper.PointText[] => {
  const px = screenSize(mark, scale);
  if (px === null) return [];
  const { bold, tone } = textStyles[mark.role];
  const isEnlarged = px > mark.size * scale;
  const shown = isEnlarged ? enlarged(mark, px / scale, drawing) : mark;
  if (shown === null) return [];
  return placedLines(shown).flatMap(({ text, at }) => {
    const item = new paper.PointText({
      point: [at.x, -at.y],
      content: text,
      fontFamily: chalks.font,
      fontWeight: bold ? 600 : 400,
      fontSize: shown.size,
      justification: shown.align === 'middle' ? 'center' : shown.align === 'end' ? 'right' : 'left',
      fillColor: colour(tone, chalks),
      insert: false,
    });
    if (shown.angle !== 0) item.rotate((-shown.angle * 180) / Math.PI, new paper.Point(at.x, -at.y));
    if (!isEnlarged) return [item];
    // Larger than its place, it lies over lines: a rim of paper keeps it legible.
    const rim = item.clone({ insert: false });
    rim.strokeColor = new paper.Color(chalks.paper);
    rim.strokeWidth = RIM / scale;
    rim.strokeJoin = 'round';
    return [rim, item];
  });
};
