import { describe, expect, test } from 'vitest';
import type { Values } from '../../src/caps/parameter.ts';
import { fetchStyles } from '../../src/caps/registry.ts';
import type { Head } from '../../src/caps/style.ts';
import type { Figure } from '../../src/pattern/piece.ts';
import type { Unit } from '../../src/units.ts';
import { say } from '../../src/words.ts';
import { CORDUROY, headIn } from './cloths.ts';
import { HEADS } from './family.ts';
import { usualCaps } from './usual-caps.ts';

const styles = await fetchStyles();

/** A number as it is typed in, and half of its last place: as far as it may be from what was reckoned with. */
interface Typed {
  readonly value: number;
  readonly within: number;
}

/** A thickness has two decimals at most, a part and an angle one; whole numbers without a unit are counted. */
const LAST_PLACE: Readonly<Record<string, number>> = { mm: 0.01, '%': 0.1, '°': 0.1 };

const typedIn = (digits: string, measure: string, unit: Unit): Typed => {
  const decimals = digits.split('.')[1]?.length ?? 0;
  const place = LAST_PLACE[measure] ?? (measure === '' && decimals === 0 ? 0 : 10 ** -decimals);
  const size = measure === '%' ? 1 / 100 : measure === 'mm' ? { cm: 1 / 10, in: 1 / 25.4 }[unit] : 1;
  return { value: Number(digits) * size, within: (place * size) / 2 };
};

/**
 * What a pocket calculator in degrees makes of an expression as it is written, and how far that may be off for all that was
 * rounded before it was typed; NaN for what it has no keys for.
 */
const calculated = (written: string, unit: Unit): Typed => {
  const typed: Typed[] = [];
  const keys = written
    .replace(/(\d+(?:\.\d+)?)(?: (cm|in|mm|%)|(°))?/g, (_, digits, measure, degree) => {
      typed.push(typedIn(digits, measure ?? degree ?? '', unit));
      return `x[${typed.length - 1}]`;
    })
    .replaceAll('÷', '/')
    .replaceAll('×', '*')
    .replaceAll('−', '-')
    .replaceAll('²', '**2')
    .replaceAll('√', 'Math.sqrt')
    .replace(/\bcos (x\[\d+\])/g, 'Math.cos($1*Math.PI/180)')
    .replaceAll('arcsin', '180/Math.PI*Math.asin');
  if (/[^\d\s.()+*/-]/.test(keys.replace(/Math\.(sqrt|cos|asin|PI)|x\[\d+\]/g, '')))
    return { value: Number.NaN, within: 0 };
  const press = Function('x', `return ${keys}`) as (x: readonly number[]) => number;
  const numbers = typed.map(({ value }) => value);
  const value = press(numbers);
  const off = typed.map(({ within }, i) =>
    Math.max(...[within, -within].map((by) => Math.abs(press(numbers.with(i, numbers[i]! + by)) - value))),
  );
  return { value, within: off.reduce((sum, one) => sum + one, 0) };
};

/** What is not reckoned with keys but measured on the piece. */
const IN_WORDS = /further (in|out)/;

/** A figure in the reader’s unit, its result and what comes of the numbers before it; null where nothing is reckoned. */
const reckoned = ({ worked }: Figure, unit: Unit) => {
  const text = say(worked, unit);
  const [left, right, ...more] = text.split(' = ');
  if (right === undefined || more.length > 0 || IN_WORDS.test(left!)) return null;
  const [result] = right.split(', ');
  return { text, shown: calculated(result!, unit), typed: calculated(left!, unit) };
};

/** What is left of two roundings that meet, and of binary fractions: a hundredth more than the numbers allow. */
const MORE = 1.01;

describe('the arithmetic', () => {
  for (const unit of ['cm', 'in'] as const) {
    test(`comes out on a calculator as it is written, in ${unit}`, () => {
      const wrong = new Set<string>();
      let count = 0;
      for (const style of styles) {
        const thick = (values: Values): Head => headIn(CORDUROY, HEADS[3]!, style, values);
        const heads = [() => HEADS[3]!, thick];
        for (const { values, head } of heads.flatMap((headOf) =>
          usualCaps(style, headOf).map((values) => ({ values, head: headOf(values) })),
        )) {
          const { pattern, facts } = style.draft(values, head);
          const figures = [...pattern.pieces.flatMap((p) => p.figures), ...facts.flatMap((f) => f.reckoning)];
          for (const figure of figures) {
            const found = reckoned(figure, unit);
            if (found === null) continue;
            count++;
            const { shown, typed } = found;
            if (!(Math.abs(shown.value - typed.value) <= MORE * (shown.within + typed.within) + 1e-9))
              wrong.add(`${style.id}, ${figure.name}: ${found.text} (${typed.value} within ${typed.within})`);
          }
        }
      }
      expect([...wrong]).toEqual([]);
      expect(count).toBeGreaterThan(1000);
    });
  }
});
