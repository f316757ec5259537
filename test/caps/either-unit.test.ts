import { beforeAll, expect, test } from 'vitest';
import { everyCap, type Written } from '../guide/caps.ts';

let caps: readonly Written[] = [];
beforeAll(async () => {
  caps = await everyCap();
}, 60_000);

/** A length written out in a unit, which no switch of units would change. */
const WRITTEN_OUT = /\d\s*(mm|cm|m|in|inch(es)?)\b/;

test('no piece writes a length out in a unit of its own: formulas and notes are said in the sewist’s', () => {
  const wrong = new Set<string>();
  for (const { draft } of caps) {
    for (const { figures, notes, notions = [] } of draft.pattern.pieces) {
      const said = [
        ...figures.map(({ formula }) => formula),
        ...[
          ...figures.map(({ worked }) => worked),
          ...notes,
          ...notions.map(({ size = [] }) => size),
        ].flatMap((sentence) => sentence.filter((part) => typeof part === 'string')),
      ];
      for (const text of said) if (WRITTEN_OUT.test(text)) wrong.add(text);
    }
  }
  expect([...wrong]).toEqual([]);
});
