import paper from 'paper/dist/paper-core';
import type { Placed } from '../../drawing/arrange.ts';
import type { TextMark, TextRole } from '../../drawing/drawing.ts';
import { textStyles } from '../../drawing/roles.ts';
import { placedLines } from '../../drawing/text-block.ts';
import { enlarged } from './enlarged.ts';
import type { Look } from './look.ts';
import { screenSize } from './screen-size.ts';

/** Width in pixels of the rim of paper round a text that is enlarged. */
const RIM = 5;

/** One line of text on the table. */
interface Written extends Pick<TextMark, 'role' | 'size' | 'align' | 'angle'> {
  readonly piece: string;
  readonly text: string;
  /** Paper's, y down. */
  readonly x: number;
  readonly y: number;
  /** Larger than its place, it lies over lines: a rim of paper keeps it legible. */
  readonly rimmed: boolean;
}

/** A line of text as Paper's items: itself, over its rim if it has one. */
export interface Lettered {
  readonly written: Written;
  readonly items: readonly paper.PointText[];
}

/** The texts of some roles on the table. */
export interface Texts {
  readonly group: paper.Group;
  /** Gives the texts that lie there now. */
  readonly lay: (placed: readonly Placed[], look: Look) => readonly Lettered[];
}

export const openTexts = (wanted: (role: TextRole) => boolean): Texts => {
  const group = new paper.Group({ insert: false });
  let before: readonly Lettered[] = [];
  let beforeLook: Look | null = null;
  const lay = (placed: readonly Placed[], look: Look): readonly Lettered[] => {
    const reusable = look === beforeLook ? before : [];
    const now = writtenOn(placed, look, wanted).map((written, i) => lettered(written, look, reusable[i]));
    if (now.length !== before.length || now.some(({ items }, i) => items !== before[i]?.items)) {
      group.removeChildren();
      group.addChildren(now.flatMap(({ items }) => items));
    }
    [before, beforeLook] = [now, look];
    return now;
  };
  return { group, lay };
};

/** The texts as they are shown at this scale: true size close up, names and figures enlarged from afar. */
const writtenOn = (
  placed: readonly Placed[],
  { scale }: Look,
  wanted: (role: TextRole) => boolean,
): Written[] =>
  placed.flatMap(({ drawing, at: origin }) =>
    drawing.marks.flatMap((mark) => {
      const px = mark.kind === 'text' && wanted(mark.role) ? screenSize(mark, scale) : null;
      if (mark.kind !== 'text' || px === null) return [];
      const rimmed = px > mark.size * scale;
      const shown = rimmed ? enlarged(mark, px / scale, drawing) : mark;
      if (shown === null) return [];
      const { role, size, align, angle } = shown;
      return placedLines(shown).map(({ text, at }) => {
        const [x, y] = [origin.x + at.x, -origin.y - at.y];
        return { piece: drawing.id, text, role, size, align, angle, x, y, rimmed };
      });
    }),
  );

/** The letters that stood there before, moved, where they look the same; else new ones. */
const lettered = (written: Written, look: Look, before: Lettered | undefined): Lettered => {
  const items = before && looksLike(written, before.written) ? before.items : letter(written, look);
  for (const item of items) item.point = new paper.Point(written.x, written.y);
  return { written, items };
};

const looksLike = (a: Written, b: Written): boolean =>
  a.text === b.text &&
  a.role === b.role &&
  a.size === b.size &&
  a.align === b.align &&
  a.angle === b.angle &&
  a.rimmed === b.rimmed;

const letter = (written: Written, { chalks, scale }: Look): paper.PointText[] => {
  const { bold, tone } = textStyles[written.role];
  const item = new paper.PointText({
    content: written.text,
    fontFamily: chalks.font,
    fontWeight: bold ? 600 : 400,
    fontSize: written.size,
    justification: written.align === 'middle' ? 'center' : written.align === 'end' ? 'right' : 'left',
    fillColor: chalks[tone],
    insert: false,
  });
  item.rotate((-written.angle * 180) / Math.PI, new paper.Point(0, 0));
  if (!written.rimmed) return [item];
  const rim = item.clone({ insert: false });
  rim.strokeColor = new paper.Color(chalks.paper);
  rim.strokeWidth = RIM / scale;
  rim.strokeJoin = 'round';
  return [rim, item];
};
