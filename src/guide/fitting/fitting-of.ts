import { applies, type Parameter, type Values } from '../../caps/parameter.ts';
import type { Head, Style } from '../../caps/style.ts';
import { fieldOf } from '../../caps/validate.ts';
import { mm, type Words, words } from '../../words.ts';
import { causeOf } from './causes.ts';
import { type FindingId, findingOf, type Remedy } from './findings.ts';

/** What the wearer found, and by how much where pins or a tape told, mm. */
export interface Found {
  readonly id: FindingId;
  readonly amount?: number;
}

/** One row of the style's table, before and after; mm, or radians for an angle, or parts of one. */
export interface FitChange {
  readonly key: string;
  readonly label: string;
  readonly kind: 'length' | 'angle' | 'ratio';
  readonly from: number;
  readonly to: number;
}

export interface FitAdvice {
  readonly id: FindingId;
  readonly title: string;
  readonly cause: Words;
  readonly change: FitChange | null;
  /** What is still missing where the style does not go as far as pins or tape ask; null where it does. */
  readonly missing: Words | null;
}

/** What a fitting comes to. Nothing is changed that two findings pull different ways. */
export interface Fitting {
  readonly advice: readonly FitAdvice[];
  readonly changes: readonly FitChange[];
  readonly conflicts: readonly { readonly label: string; readonly titles: readonly string[] }[];
}

export interface Fitted {
  readonly style: Style;
  readonly values: Values;
  readonly head: Head;
  readonly finishedGirth: number;
}

/** From what was found to its likely causes in this draft and the change that would mend them. */
export const fittingOf = (found: readonly Found[], on: Fitted): Fitting => {
  const advice = found.map((one) => adviceOn(one, on));
  const keys = [...new Set(advice.flatMap(({ change }) => change?.key ?? []))];
  const changes: FitChange[] = [];
  const conflicts: { label: string; titles: readonly string[] }[] = [];
  for (const key of keys) {
    const on = advice.filter(({ change }) => change?.key === key);
    const ways = new Set(on.map(({ change }) => Math.sign(change!.to - change!.from)));
    if (ways.size > 1) conflicts.push({ label: on[0]!.change!.label, titles: on.map(({ title }) => title) });
    // Two findings that ask for the same are one: the larger counts.
    else changes.push(on.map(({ change }) => change!).reduce((a, b) => (sizeOf(b) > sizeOf(a) ? b : a)));
  }
  return { advice, changes, conflicts };
};

const sizeOf = ({ from, to }: FitChange): number => Math.abs(to - from);

const adviceOn = ({ id, amount }: Found, on: Fitted): FitAdvice => {
  const finding = findingOf(id);
  const { remedies } = finding;
  // What was measured has its one remedy, though it be used up.
  const remedy =
    remedies.find((one) => isOpen(one, on)) ?? (finding.amount && remedies.find((one) => counts(one, on)));
  const { title } = finding;
  if (remedy === undefined) {
    return {
      id,
      title,
      cause: words`In this style no measure changes that. Try another style, or firmer or softer cloth.`,
      change: null,
      missing: null,
    };
  }
  const cause = causeOf(id, {
    key: remedy.key,
    values: on.values,
    headGirth: on.head.girth,
    finishedGirth: on.finishedGirth,
  });
  const step = finding.amount === undefined ? remedy.by : remedy.by * (amount ?? finding.amount.usual);
  const change = changeBy(remedy.key, step, on);
  const left = step - (change === null ? 0 : change.to - change.from);
  return { id, title, cause, change, missing: finding.amount === undefined ? null : missingOf(left) };
};

/** Less than this is no shortage that a tape could tell, mm. */
const HAIR = 0.05;

const missingOf = (left: number): Words | null => {
  if (Math.abs(left) < HAIR) return null;
  return left > 0
    ? words`That is the most this style allows: ${mm(left)} are still missing. Measure the head again.`
    : words`That is the least this style allows: ${mm(-left)} are still too much. Measure the head again.`;
};

/** Whether a style has the row, and the row counts. */
const counts = ({ key, when }: Remedy, { style, values }: Fitted): boolean => {
  const row = style.parameters[key];
  if (row === undefined || !('min' in row) || row.kind === 'row') return false;
  return applies(style.parameters, key, values) && (when === undefined || values[when.key] === when.is);
};

/** Whether the row counts and there is still a way to go. */
const isOpen = (remedy: Remedy, on: Fitted): boolean => {
  if (!counts(remedy, on)) return false;
  const { min, max } = rowOf(remedy.key, on);
  const now = Number(on.values[remedy.key]);
  return remedy.by > 0 ? now < max : now > min;
};

const rowOf = (key: string, { style }: Fitted) =>
  style.parameters[key] as Extract<Parameter, { kind: 'length' | 'angle' | 'ratio' }>;

/** The new value, held to the row's range and to what can be sewn. Null where it cannot change at all. */
const changeBy = (key: string, step: number, on: Fitted): FitChange | null => {
  const { style, values, head } = on;
  const row = rowOf(key, on);
  const from = Number(values[key]);
  let to = Math.min(Math.max(from + step, row.min), row.max);
  const problem = style.problems({ ...values, [key]: to }, head)[0];
  if (problem !== undefined) {
    // What cannot be sewn gives way to the nearest that can, if that is still on the way.
    const nearest = problem.field === fieldOf(key) ? problem.nearest : undefined;
    if (nearest === undefined || Math.sign(nearest - from) !== Math.sign(step)) return null;
    to = nearest;
    if (style.problems({ ...values, [key]: to }, head).length > 0) return null;
  }
  return to === from ? null : { key, label: row.label, kind: row.kind, from, to };
};
