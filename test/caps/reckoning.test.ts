import { describe, expect, test } from 'vitest';
import { defaultsOf, type Values } from '../../src/caps/parameter.ts';
import { fetchStyles } from '../../src/caps/registry.ts';
import type { Figure } from '../../src/pattern/piece.ts';
import type { Unit } from '../../src/units.ts';
import { say } from '../../src/words.ts';
import { HEADS } from './family.ts';

const styles = await fetchStyles();

/** What a pocket calculator in degrees makes of an expression as it is written; NaN for what it has no keys for. */
const calculated = (written: string): number => {
  const keys = written
    .replace(/(?<=[\d.]) (cm|in|mm)\b/g, '')
    .replace(/([\d.]+) %/g, '($1/100)')
    .replace(/(\d+)°/g, '$1')
    .replaceAll('÷', '/')
    .replaceAll('×', '*')
    .replaceAll('−', '-')
    .replaceAll('²', '**2')
    .replaceAll('√', 'Math.sqrt')
    .replace(/\bcos ([\d.]+)°?/g, 'Math.cos($1*Math.PI/180)')
    .replaceAll('arcsin', '180/Math.PI*Math.asin');
  if (/[^\d\s.()+*/-]/.test(keys.replace(/Math\.(sqrt|cos|asin|PI)/g, ''))) return Number.NaN;
  return Function(`return ${keys}`)() as number;
};

/** What is not reckoned with keys but measured on the piece. */
const IN_WORDS = /further (in|out)/;

/** A figure in the reader’s unit, its result and what comes of the numbers before it; null where nothing is reckoned. */
const reckoned = ({ worked }: Figure, unit: Unit) => {
  const text = say(worked, unit);
  const [left, right, ...more] = text.split(' = ');
  if (right === undefined || more.length > 0 || IN_WORDS.test(left!)) return null;
  const [result] = right.split(', ');
  return { text, shown: calculated(result!), typed: calculated(left!) };
};

/** Each style as it comes, with each other choice, and as it starts. */
const wishesOf = (style: (typeof styles)[number]): readonly Values[] => {
  const defaults = defaultsOf(style.parameters) as Values;
  const choices = Object.entries(style.parameters).flatMap(([key, row]) =>
    row.kind === 'choice' ? row.options.map(({ value }) => ({ [key]: value })) : [],
  );
  return [{}, ...choices, ...style.starts.map(({ values }) => values as Values)]
    .map((some) => ({ ...defaults, ...some }))
    .filter((values) => style.problems(values, HEADS[3]!).length === 0);
};

describe('the arithmetic', () => {
  for (const unit of ['cm', 'in'] as const) {
    test(`comes out on a calculator as it is written, in ${unit}`, () => {
      const wrong = new Set<string>();
      let count = 0;
      for (const style of styles) {
        for (const values of wishesOf(style)) {
          const { pattern, facts } = style.draft(values, HEADS[3]!);
          const figures = [...pattern.pieces.flatMap((p) => p.figures), ...facts.flatMap((f) => f.reckoning)];
          for (const figure of figures) {
            const found = reckoned(figure, unit);
            if (found === null) continue;
            count++;
            // The numbers are rounded as they are shown; what is left of a small difference is rounded most.
            if (!(Math.abs(found.shown - found.typed) <= 0.02 * Math.abs(found.shown) + 0.1))
              wrong.add(`${style.id}, ${figure.name}: ${found.text} (${found.typed})`);
          }
        }
      }
      expect([...wrong]).toEqual([]);
      expect(count).toBeGreaterThan(500);
    });
  }
});
