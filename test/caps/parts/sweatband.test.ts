import { describe, expect, test } from 'vitest';
import { defaultsOf, type Values } from '../../../src/caps/parameter.ts';
import { fetchStyle, type StyleId } from '../../../src/caps/registry.ts';
import { HEADS } from '../family.ts';

const HEAD = HEADS[3]!;

const problemsOf = async (id: StyleId, values: Values) => {
  const style = await fetchStyle(id);
  return style.problems({ ...defaultsOf(style.parameters), ...values }, HEAD);
};

const low = { sideBandHeight: 30, sweatbandHeight: 50 };

describe('a sweatband', () => {
  test.each<[StyleId, Values]>([
    ['pillbox', {}],
    ['bucket', {}],
    ['sun-hat', { crown: 'tipped' }],
  ])('of a %s is no higher than the side that it lies in', async (id, values) => {
    const problems = await problemsOf(id, { ...values, ...low });
    expect(problems).toMatchObject([{ field: 'cap.sweatbandHeight', nearest: 30 }]);
    expect(await problemsOf(id, { ...values, ...low, sweatbandHeight: 30 })).toEqual([]);
  });

  test('may be as high as it likes where there is none, or no side with an edge', async () => {
    expect(await problemsOf('bucket', { ...low, reversible: true })).toEqual([]);
    expect(await problemsOf('sun-hat', { ...low, crown: 'gored' })).toEqual([]);
  });
});
