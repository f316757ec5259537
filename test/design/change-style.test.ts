import { describe, expect, test } from 'vitest';
import { defaultsOf, rowsOf, type Values } from '../../src/caps/parameter.ts';
import { fetchStyles } from '../../src/caps/registry.ts';
import { valuesFor } from '../../src/design/change-style.ts';
import { HEADS } from '../caps/family.ts';

const styles = await fetchStyles();
const head = HEADS[3]!;

describe('another style', () => {
  test('keeps every value that was chosen and that both styles have', () => {
    for (const from of styles) {
      for (const to of styles) {
        const chosen: Values = { ...defaultsOf(from.parameters), ease: 17, allowance: 9 };
        expect(valuesFor(to, chosen, from, head), `${from.id} to ${to.id}`).toMatchObject({
          ease: 17,
          allowance: 9,
        });
      }
    }
  });

  test('takes its own usual value for what was never touched', () => {
    for (const from of styles) {
      for (const to of styles) {
        const values = valuesFor(to, defaultsOf(from.parameters), from, head);
        expect(values, `${from.id} to ${to.id}`).toMatchObject(defaultsOf(to.parameters));
      }
    }
  });

  test('takes its own usual value after a style in between that does not know it', () => {
    const find = (id: string) => styles.find((style) => style.id === id)!;
    const [gored, flat, skull] = [find('gored'), find('three-piece'), find('skull')];
    const between = valuesFor(flat, defaultsOf(gored.parameters), gored, head);
    // A gored cap comes with a button on top, a skull cap without.
    expect(valuesFor(skull, between, flat, head)).toMatchObject(defaultsOf(skull.parameters));
  });

  test('can be sewn whatever the extremes of the style before', () => {
    for (const from of styles) {
      for (const end of ['min', 'max'] as const) {
        const extreme = Object.fromEntries(
          Object.entries(from.parameters).map(([key, p]) => [key, 'step' in p ? p[end] : p.default]),
        ) as Values;
        for (const to of styles) {
          const values = valuesFor(to, extreme, from, head);
          expect(
            to.problems(rowsOf(to.parameters, values), head),
            `${from.id} at ${end} to ${to.id}`,
          ).toEqual([]);
        }
      }
    }
  });

  test('and back again brings back what only the first style has', () => {
    const [first, second] = [styles[0]!, styles[1]!];
    const before: Values = { ...defaultsOf(first.parameters), crownFullness: 77 };
    const there = valuesFor(second, before, first, head);
    expect(valuesFor(first, there, second, head)).toMatchObject({ crownFullness: 77 });
  });
});
