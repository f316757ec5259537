import type { Mark, TextRole } from '../../drawing/drawing.ts';
import { LEADING, textStyles } from '../../drawing/roles.ts';
import type { Point } from '../../geometry/point.ts';
import { point } from '../../geometry/point.ts';
import { brokenLines } from '../broken-lines.ts';
import { text } from '../tag.ts';

/** Marks set below each other from a point down, and how far down they reach, mm. */
export interface Laid {
  readonly marks: readonly Mark[];
  readonly height: number;
}

export const NOTHING: Laid = { marks: [], height: 0 };

/** Something that can be set with its upper left corner on a point. */
export type Part = (at: Point) => Laid;

/** A run of words broken into lines of a width, mm. */
export const paragraph =
  (role: TextRole, words: string, width: number, after = 0): Part =>
  (at) => {
    const { size, bold } = textStyles[role];
    const lines = brokenLines(words, width / size, bold);
    const height = lines.length * LEADING * size;
    return { marks: [text(role, point(at.x, at.y - height / 2), lines)], height: height + after };
  };

/** Free space, mm. */
export const space =
  (height: number): Part =>
  () => ({ marks: [], height });

/** The first line of a part moved up, so that its capitals begin at the top. */
export const flush =
  (role: TextRole, part: Part): Part =>
  (at) => {
    const up = (LEADING / 2 - 0.33) * textStyles[role].size;
    const laid = part(point(at.x, at.y + up));
    return { marks: laid.marks, height: laid.height - up };
  };

/** Parts below each other. */
export const column =
  (parts: readonly Part[]): Part =>
  (at) =>
    parts.reduce<Laid>((laid, part) => {
      const next = part(point(at.x, at.y - laid.height));
      return { marks: [...laid.marks, ...next.marks], height: laid.height + next.height };
    }, NOTHING);

/** Parts set in columns one after the other, each in as much of them as it needs; and the parts for which no room is left. */
export const fillColumns = (
  parts: readonly Part[],
  columns: readonly { readonly at: Point; readonly height: number }[],
): { readonly marks: readonly Mark[]; readonly rest: readonly Part[] } => {
  const marks: Mark[] = [];
  let next = 0;
  for (const { at, height } of columns) {
    let used = 0;
    for (; next < parts.length; next++) {
      const laid = parts[next]!(point(at.x, at.y - used));
      if (used + laid.height > height) break;
      marks.push(...laid.marks);
      used += laid.height;
    }
  }
  return { marks, rest: parts.slice(next) };
};
