import type { LineMark, TextMark } from '../../drawing/drawing.ts';
import { lineStyles, textStyles } from '../../drawing/roles.ts';
import { blockSize, placedLines } from '../../drawing/text-block.ts';
import { arc } from '../../geometry/path.ts';
import { heading, type Point } from '../../geometry/point.ts';
import { arcToCubics, type Sink, walk } from '../../geometry/walk.ts';
import type { Sheet, SheetSet } from '../sheet.ts';
import { setText } from './fractions.ts';
import type { Pen, Typeface } from './pen.ts';

/** Draws one sheet: everything inside the margins, stretched about their corner as the printer needs it. */
export const drawSheet = (pen: Pen, face: Typeface, sheet: Sheet, set: SheetSet): void => {
  const { margin } = set.paper;
  const { across, up } = set.scale;
  const corner = { x: margin, y: margin };
  if (across !== 1 || up !== 1) pen.stretch(across, up, corner);
  const right = margin + (set.page.width - 2 * margin) / across;
  const top = margin + (set.page.height - 2 * margin) / up;
  pen.moveTo(margin, margin);
  pen.lineTo(right, margin);
  pen.lineTo(right, top);
  pen.lineTo(margin, top);
  pen.close();
  pen.clip();
  for (const mark of sheet.marks) {
    if (mark.kind === 'line') drawLine(pen, mark);
    else drawText(pen, face, mark);
  }
};

const drawLine = (pen: Pen, { role, path, filled, ground }: LineMark): void => {
  const { weight, dash } = lineStyles[role];
  walk(path, sinkOf(pen));
  if (filled) pen.fill();
  else if (ground) pen.cover(weight, dash);
  else pen.stroke(weight, dash);
};

/** A pen as something that can follow a path. Arcs are drawn as cubics: PDF has no others. */
const sinkOf = (pen: Pen): Sink => ({
  moveTo: ({ x, y }) => pen.moveTo(x, y),
  lineTo: ({ x, y }) => pen.lineTo(x, y),
  arcTo: (centre, radius, startAngle, sweep) => {
    const from = onCircle(centre, radius, startAngle);
    for (const { c1, c2, to } of arcToCubics(arc(centre, from, sweep)))
      pen.curveTo(c1.x, c1.y, c2.x, c2.y, to.x, to.y);
  },
  cubicTo: (c1, c2, to) => pen.curveTo(c1.x, c1.y, c2.x, c2.y, to.x, to.y),
  close: () => pen.close(),
});

const onCircle = (centre: Point, radius: number, angle: number): Point => {
  const { x, y } = heading(angle);
  return { x: centre.x + radius * x, y: centre.y + radius * y };
};

const drawText = (pen: Pen, face: Typeface, mark: TextMark): void => {
  const { bold } = textStyles[mark.role];
  const along = heading(mark.angle);
  // An empty line leaves no ink, and has no width to be fitted.
  const lines = placedLines(mark)
    .filter(({ text }) => text !== '')
    .map(({ text, at }) => ({ text: setText(text), at }));
  const widths = lines.map(({ text }) => face.width(text, mark.size, bold));
  // Room was kept for an estimate: letters that run wider are set smaller.
  const k = Math.min(1, blockSize(mark).width / Math.max(...widths));
  for (const [i, { text, at }] of lines.entries()) {
    const back = { start: 0, middle: 0.5, end: 1 }[mark.align] * widths[i]! * k;
    const [x, y] = [at.x - back * along.x, at.y - back * along.y];
    pen.text({ text, x, y, size: mark.size * k, bold, angle: mark.angle });
  }
};
