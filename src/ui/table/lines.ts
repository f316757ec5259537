import paper from 'paper/dist/paper-core';
import type { Placed } from '../../drawing/arrange.ts';
import type { LineMark } from '../../drawing/drawing.ts';
import { lineStyles } from '../../drawing/roles.ts';
import type { Look } from './look.ts';
import { penScale } from './screen-size.ts';
import { type Lying, openShapes, type Shapes } from './shapes.ts';

/** No line is thinner than this, pixels. */
const HAIRLINE = 0.7;

/** The lines of some roles on the table. */
export interface Lines {
  readonly group: paper.Group;
  readonly lay: (placed: readonly Placed[], look: Look) => void;
}

/** Lines of one look: a mark that shows it, and the shapes that have it. */
interface Alike {
  readonly mark: LineMark;
  readonly shapes: Shapes;
  inked: Look | null;
}

export const openLines = (wanted: (mark: LineMark) => boolean): Lines => {
  const group = new paper.Group({ insert: false });
  const looks = new Map<string, Alike>();
  const lay = (placed: readonly Placed[], look: Look): void => {
    const paths = new Map<string, Lying[]>();
    for (const { drawing, at } of placed) {
      for (const mark of drawing.marks) {
        if (mark.kind !== 'line' || !wanted(mark)) continue;
        const name = `${mark.role} ${mark.tone ?? ''} ${mark.filled ?? false}`;
        const alike = paths.get(name);
        if (alike) alike.push({ path: mark.path, at });
        else paths.set(name, [{ path: mark.path, at }]);
        if (!looks.has(name)) looks.set(name, opened(mark, group));
      }
    }
    for (const [name, alike] of looks) {
      alike.shapes.lay(paths.get(name) ?? []);
      if (alike.inked !== look) ink(alike, look);
    }
  };
  return { group, lay };
};

const opened = (mark: LineMark, group: paper.Group): Alike => {
  const shapes = openShapes();
  group.addChild(shapes.item);
  return { mark, shapes, inked: null };
};

/** Gives lines the weight, dash and colour of their role: no thinner on the screen than can be seen. */
const ink = (alike: Alike, look: Look): void => {
  const { mark, shapes } = alike;
  const { chalks, scale } = look;
  const { weight, dash, tone } = lineStyles[mark.role];
  const pen = penScale(scale) / scale;
  const colour = new paper.Color(chalks[mark.tone ?? tone]);
  shapes.item.strokeColor = colour;
  shapes.item.strokeWidth = Math.max(weight * pen, HAIRLINE / scale);
  shapes.item.dashArray = dash.map((d) => d * pen);
  if (mark.filled) shapes.item.fillColor = colour;
  alike.inked = look;
};
