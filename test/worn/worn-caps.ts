import {
  type Condition,
  defaultsOf,
  type ParameterTable,
  type ParameterValue,
  type Values,
} from '../../src/caps/parameter.ts';
import { fetchStyles } from '../../src/caps/registry.ts';
import type { CapDraft, Head, Style } from '../../src/caps/style.ts';
import { fieldOf } from '../../src/caps/validate.ts';
import { between3, distance3, dot3, type Point3, subtract3 } from '../../src/geometry/space.ts';
import { assemble } from '../../src/worn/assemble.ts';
import { type HeadForm, headCut } from '../../src/worn/head-form.ts';
import { knotAt, type Sheet, trianglesIn } from '../../src/worn/sheet.ts';
import { headIn, WINTER } from '../caps/cloths.ts';
import { HEADS } from '../caps/family.ts';

export const styles = await fetchStyles();

export interface Assembled {
  readonly title: string;
  readonly style: Style;
  readonly values: Values;
  readonly draft: CapDraft;
  readonly head: Head;
  readonly sheets: readonly Sheet[];
}

export const assembled = (style: Style, values: Partial<Values>, head: Head, title = ''): Assembled => {
  const all = { ...defaultsOf(style.parameters), ...values } as Values;
  const draft = style.draft(all, head);
  const sheets = assemble(style.form(all, head), draft.pattern.pieces);
  return { title: `${style.name} ${title}`, style, values: all, draft, head, sheets };
};

const STARTS = HEADS[4]!;
const AS_IT_COMES = HEADS[0]!;

/**
 * A style as it comes, on a child's head and a man's, and from each of its starting points on the man's, in cloth of no
 * thickness; and as it comes in melton with a quilted lining.
 */
export const capsOf = (style: Style): readonly Assembled[] => {
  const usual = defaultsOf(style.parameters) as Values;
  const plain = [AS_IT_COMES, STARTS].map((head) => ({ name: '', values: {}, head }));
  const winter = { name: 'in winter cloth', values: {}, head: headIn(WINTER, STARTS, style, usual) };
  const fromStarts = style.starts.map(({ name, values }) => ({ name, values, head: STARTS }));
  return [...plain, winter, ...fromStarts].flatMap(({ name, values, head }) =>
    style.problems({ ...usual, ...values } as Values, head).length > 0
      ? []
      : [assembled(style, values as Partial<Values>, head, `${name}, ${head.girth}`)],
  );
};

/** A style with every other thing that can be chosen of it, and with its longest visor: on a man's head, in cloth of no thickness. */
export const chosenOf = (style: Style): readonly Assembled[] => {
  const { parameters } = style;
  const chosen = Object.entries(parameters).flatMap(([key, row]) =>
    row.kind !== 'choice'
      ? []
      : row.options
          .filter(({ value }) => value !== row.default)
          .map(({ value }) => ({ ...counting(parameters, key), [key]: value })),
  );
  return [...chosen, ...longestVisor(style)].flatMap((values) =>
    style.problems({ ...defaultsOf(parameters), ...values }, STARTS).length > 0
      ? []
      : [assembled(style, values as Partial<Values>, STARTS, JSON.stringify(values))],
  );
};

/** Values with which a row counts. */
const counting = (table: ParameterTable, key: string): Values =>
  Object.fromEntries(
    Object.entries(table[key]?.when ?? {}).flatMap(([other, condition]) => [
      ...Object.entries(counting(table, other)),
      [other, meeting(condition)],
    ]),
  );

const meeting = (condition: Condition): ParameterValue => {
  if (typeof condition !== 'object') return condition;
  return 'above' in condition ? condition.above + 10 : condition[0]!;
};

/** As long as the drafting rule says it can be. */
const longestVisor = (style: Style): readonly Values[] => {
  const row = style.parameters.visorLength;
  if (row?.kind !== 'length') return [];
  const longest = { visorLength: row.max };
  const [problem] = style.problems({ ...defaultsOf(style.parameters), ...longest }, STARTS);
  if (problem === undefined) return [longest];
  return problem.field === fieldOf('visorLength') && problem.nearest !== undefined
    ? [{ visorLength: problem.nearest }]
    : [];
};

export const lengthOf = (points: readonly Point3[]): number =>
  points.slice(1).reduce((sum, p, i) => sum + distance3(points[i]!, p), 0);

/** The point at a share of the length of a line. */
export const pointAlong = (points: readonly Point3[], share: number): Point3 => {
  let rest = lengthOf(points) * share;
  for (let i = 1; i < points.length; i++) {
    const [p, q] = [points[i - 1]!, points[i]!];
    const step = distance3(p, q);
    if (step > 0 && rest <= step) {
      const t = rest / step;
      return { x: p.x + (q.x - p.x) * t, y: p.y + (q.y - p.y) * t, z: p.z + (q.z - p.z) * t };
    }
    rest -= step;
  }
  return points.at(-1)!;
};

/** How far two lines that are sewn together are apart where they are farthest, mm. */
export const gapBetween = (a: readonly Point3[], b: readonly Point3[]): number => {
  const places = (line: readonly Point3[]) => Array.from({ length: 41 }, (_, i) => pointAlong(line, i / 40));
  return Math.max(...places(a).map((p) => toLine(b, p)), ...places(b).map((p) => toLine(a, p)));
};

/** How far apart the places are that face each other by their share of the length, mm. */
export const shiftBetween = (a: readonly Point3[], b: readonly Point3[]): number =>
  Math.max(...Array.from({ length: 41 }, (_, i) => distance3(pointAlong(a, i / 40), pointAlong(b, i / 40))));

const toLine = (line: readonly Point3[], p: Point3): number => {
  let least = Infinity;
  for (let i = 1; i < line.length; i++) {
    const [a, b] = [line[i - 1]!, line[i]!];
    const along = subtract3(b, a);
    const square = dot3(along, along);
    const t = square > 0 ? Math.min(1, Math.max(0, dot3(subtract3(p, a), along) / square)) : 0;
    least = Math.min(least, distance3(p, between3(a, b, t)));
  }
  return least;
};

/** The pieces that stand in the shell as they are cut, not as a likeness. */
export const trueTo = ({ sheets }: Assembled): ReadonlySet<string> => {
  const likened = new Set(sheets.filter(({ likeness }) => likeness).map(({ piece }) => piece));
  return new Set(sheets.map(({ piece }) => piece).filter((piece) => !likened.has(piece)));
};

/** By Heron's formula, triangle by triangle, mm². */
export const areaInSpace = (sheet: Sheet): number => {
  const corners = trianglesIn(sheet);
  let sum = 0;
  for (let i = 0; i < corners.length; i += 3) {
    const [p, q, r] = [0, 1, 2].map((n) => knotAt(sheet, corners[i + n]!));
    const [a, b, c] = [distance3(p!, q!), distance3(q!, r!), distance3(r!, p!)];
    const s = (a + b + c) / 2;
    sum += Math.sqrt(Math.max(0, s * (s - a) * (s - b) * (s - c)));
  }
  return sum;
};

/** How far the deepest knot lies within a head, along its way out from the axis, mm. */
export const depthInHead = (sheets: readonly Sheet[], head: HeadForm): number => {
  let deepest = 0;
  for (const { at } of sheets) {
    for (let k = 0; k < at.length; k += 3) {
      const cut = at[k + 2]! > 0 ? headCut(head, at[k + 2]!) : null;
      if (cut === null) continue;
      const reach = Math.hypot(at[k]!, at[k + 1]!);
      const share = Math.hypot(at[k]! / cut.halfBreadth, at[k + 1]! / cut.halfLength);
      if (share > 0 && share < 1) deepest = Math.max(deepest, reach / share - reach);
    }
  }
  return deepest;
};
