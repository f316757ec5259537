import { describe, expect, test } from 'vitest';
import {
  applies,
  defaultsOf,
  type Parameter,
  type ParameterValue,
  type Values,
} from '../../src/caps/parameter.ts';
import { fetchStyles } from '../../src/caps/registry.ts';
import type { Style } from '../../src/caps/style.ts';
import { allowanceOf } from '../../src/pattern/cut-line.ts';
import { HEADS } from './family.ts';

const styles = await fetchStyles();
const HEAD = HEADS[3]!;

/** Other values of a row, the farthest first; nearer ones for where those cannot be sewn. */
const othersOf = (row: Parameter, now: ParameterValue | undefined): readonly ParameterValue[] => {
  switch (row.kind) {
    case 'choice':
      return row.options.map(({ value }) => value).filter((value) => value !== now);
    case 'switch':
      return [!now];
    case 'row':
      return [[60, 58, 50, 36, 18]];
    case 'following':
      return [row.min, row.max];
    case 'count':
      return [row.min, row.max, Number(now) + 1];
    default:
      return [row.min, row.max, (row.min + row.default) / 2, (row.max + row.default) / 2];
  }
};

/** What comes of a wish: the pieces, how wide they are cut outside their stitch lines, and what stands in plain sight. */
const draftOf = (style: Style, values: Values): string => {
  const { pattern, ...rest } = style.draft(values, HEAD);
  const { pieces, seams, allowances } = pattern;
  const widths = pieces.map(({ outline }) => outline.map(({ kind }) => allowanceOf(kind, allowances)));
  return JSON.stringify([rest, pieces, seams, widths]);
};

const formOf = (style: Style, values: Values): string => JSON.stringify(style.form(values, HEAD));

/** The style as it comes, and with each choice and switch once the other way. */
const startsOf = (style: Style): readonly Values[] => {
  const defaults = defaultsOf(style.parameters) as Values;
  const turned = Object.entries(style.parameters).flatMap(([key, row]) =>
    row.kind === 'choice' || row.kind === 'switch'
      ? othersOf(row, defaults[key]).map((value) => ({ ...defaults, [key]: value }))
      : [],
  );
  return [defaults, ...turned].filter((values) => style.problems(values, HEAD).length === 0);
};

describe('a control', () => {
  for (const style of styles) {
    test(`of a ${style.name.toLowerCase()} is shown if it changes something, and only then`, () => {
      const tested = new Set<string>();
      for (const values of startsOf(style)) {
        const [draft, form] = [draftOf(style, values), formOf(style, values)];
        for (const [key, row] of Object.entries(style.parameters)) {
          const tried = othersOf(row, values[key])
            .filter((value) => value !== values[key])
            .map((value) => ({ ...values, [key]: value }))
            .filter((other) => style.problems(other, HEAD).length === 0);
          // Nothing else can be sewn here?
          if (tried.length === 0) continue;
          tested.add(key);
          const changes = tried.some(
            (other) => draftOf(style, other) !== draft || formOf(style, other) !== form,
          );
          expect(applies(style.parameters, key, values), `${key} of ${JSON.stringify(values)}`).toBe(changes);
        }
      }
      expect([...tested].sort()).toEqual(Object.keys(style.parameters).sort());
    }, 120_000);
  }
});
