import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { flatTopParameters } from '../../src/caps/flat-top/parameters.ts';
import type { Parameter } from '../../src/caps/parameter.ts';
import { decodeSpec, encodeSpec, SPEC_VERSION } from '../../src/design/decode.ts';
import { defaultSpec } from '../../src/design/default-spec.ts';
import type { Spec } from '../../src/design/spec.ts';
import type { PaperName } from '../../src/print/paper.ts';

/** As it would come back from a file or from the browser's keeping. */
const written = (spec: Spec): Record<string, unknown> => JSON.parse(JSON.stringify(encodeSpec(spec)));

/** A saved spec with one field set to something else. */
const damaged = (path: string, value: unknown): unknown => {
  const saved = written(defaultSpec);
  const keys = path.split('.');
  let at = saved.spec as Record<string, unknown>;
  for (const key of keys.slice(0, -1)) at = at[key] as Record<string, unknown>;
  at[keys[keys.length - 1]!] = value;
  return saved;
};

/** A number, a word, a switch, nothing, or a row of numbers: all that a parameter can hold. */
const isValue = (value: unknown): boolean =>
  value === null ||
  ['number', 'string', 'boolean'].includes(typeof value) ||
  (Array.isArray(value) && value.every(Number.isFinite));

const wishFor = (parameter: Parameter): fc.Arbitrary<unknown> => {
  switch (parameter.kind) {
    case 'length':
    case 'angle':
    case 'ratio':
      return fc.double({ min: parameter.min, max: parameter.max, noNaN: true });
    case 'count':
      return fc.integer({ min: parameter.min, max: parameter.max });
    case 'following':
      return fc.option(fc.double({ min: parameter.min, max: parameter.max, noNaN: true }));
    case 'choice':
      return fc.constantFrom(...parameter.options.map((option) => option.value));
    case 'switch':
      return fc.boolean();
    case 'row':
      return fc.array(fc.double({ min: parameter.min, max: parameter.max, noNaN: true }), {
        maxLength: parameter.most,
      });
  }
};

const anySpec = fc
  .record({
    values: fc.record(
      Object.fromEntries(Object.entries(flatTopParameters).map(([key, p]) => [key, wishFor(p)])),
    ),
    readings: fc.array(fc.double({ min: 300, max: 700, noNaN: true }), { minLength: 1, maxLength: 3 }),
    length: fc.option(fc.double({ min: 120, max: 240, noNaN: true })),
    outer: fc.record({
      kind: fc.constantFrom('tweed', 'other'),
      thickness: fc.double({ min: 0, max: 3, noNaN: true }),
      nap: fc.boolean(),
      shrinkLength: fc.double({ min: 0, max: 0.1, noNaN: true }),
      price: fc.option(fc.double({ min: 0, max: 90, noNaN: true })),
    }),
    paper: fc.constantFrom<PaperName>('a4', 'letter', 'roll-914', 'one-page'),
    halves: fc.boolean(),
    unit: fc.constantFrom('cm' as const, 'in' as const),
    name: fc.string({ unit: 'grapheme', maxLength: 40 }),
  })
  .map(
    ({ values, readings, length, outer, paper, halves, unit, name }): Spec => ({
      head: { ...defaultSpec.head, readings, length },
      cap: { ...defaultSpec.cap, name, values: values as Spec['cap']['values'] },
      cloths: { ...defaultSpec.cloths, outer: { ...defaultSpec.cloths.outer, ...outer } },
      paper: { ...defaultSpec.paper, paper, halves },
      unit,
    }),
  );

describe('a saved spec', () => {
  it('from before cloths were kept has plain ones, and is not called damaged', () => {
    const { cloths: _, ...before } = defaultSpec;
    const { spec, repaired } = decodeSpec({ version: SPEC_VERSION, spec: before });
    expect(spec).toEqual(defaultSpec);
    expect(repaired).toEqual([]);
  });

  it('comes back exactly as it was wished, whatever was wished', () => {
    fc.assert(
      fc.property(anySpec, (spec) => {
        const { spec: read, repaired } = decodeSpec(written(spec));
        // -0 is written as 0: the same length to any sewist.
        expect(JSON.stringify(read)).toBe(JSON.stringify(spec));
        expect(repaired).toEqual([]);
      }),
    );
  });

  it('says which version it is', () => {
    expect(written(defaultSpec).version).toBe(SPEC_VERSION);
  });

  it('with more scraps than are kept has the first of them', () => {
    const scraps = Array.from({ length: 25 }, (_, i) => ({
      outline: [
        { x: 0, y: 0 },
        { x: 100 + i, y: 0 },
        { x: 0, y: 100 },
      ],
      flaws: [],
    }));
    const { spec, repaired } = decodeSpec(damaged('cloths.outer.scraps', scraps));
    expect(spec.cloths.outer.scraps).toEqual(scraps.slice(0, 20));
    expect(repaired).toEqual([]);
  });

  it('keeps a wish that cannot be sewn: it is a wish, not damage', () => {
    const { spec, repaired } = decodeSpec(damaged('cap.values.crownFullness', 5000));
    expect(spec.cap.values.crownFullness).toBe(5000);
    expect(repaired).toEqual([]);
  });

  it('takes the default for a parameter that is newer than the file, and does not call that damage', () => {
    const { spec, repaired } = decodeSpec(damaged('cap.values.liningTake', undefined));
    expect(spec.cap.values.liningTake).toBe(flatTopParameters.liningTake.default);
    expect(repaired).toEqual([]);
  });
});

describe('damage in a saved spec', () => {
  it.each([
    ['cap.values.ease', 'wide', 'cap.ease'],
    ['cap.values.ease', null, 'cap.ease'],
    ['cap.values.ease', 1e300, 'cap.ease'],
    ['cap.values.strap', 1, 'cap.strap'],
    ['cap.values.sideBandPieces', '3', 'cap.sideBandPieces'],
    ['cap.values.crownAllowance', '6', 'cap.crownAllowance'],
    ['cap.values.insertWidths', [60, 'x'], 'cap.insertWidths'],
    ['cap.values.insertWidths', new Array(13).fill(20), 'cap.insertWidths'],
    ['cap.style', 'helmet', 'cap.style'],
    ['head.readings', [], 'head.readings'],
    ['head.readings', [550, 551, 552, 553], 'head.readings'],
    ['head.name', 7, 'head.name'],
    ['head.length', 'long', 'head.length'],
    ['paper.paper', 'a5', 'paper.paper'],
    ['paper.margin', undefined, 'paper.margin'],
    ['paper.halves', 'no', 'paper.halves'],
    ['unit', 'ell', 'unit'],
  ])('in %s = %j costs that field alone, and is named', (path, value, field) => {
    const { spec, repaired } = decodeSpec(damaged(path, value));
    expect(spec).toEqual(defaultSpec);
    expect(repaired).toEqual([field]);
  });

  it('leaves all the rest as it was', () => {
    const mine: Spec = { ...defaultSpec, head: { ...defaultSpec.head, name: 'Euphonium', readings: [590] } };
    const saved = JSON.parse(JSON.stringify(encodeSpec(mine)));
    saved.spec.cap = 'moth-eaten';
    const { spec, repaired } = decodeSpec(saved);
    expect(spec.head).toEqual(mine.head);
    expect(spec.cap).toEqual(defaultSpec.cap);
    expect(repaired).toEqual(['cap']);
  });

  it.each([[undefined], [null], [''], [[]], [42], [{}], [{ version: 1 }], [{ version: 1, spec: [] }]])(
    'as bad as %j gives the demo cap',
    (data) => {
      expect(decodeSpec(data)).toEqual({ spec: defaultSpec, repaired: ['spec'] });
    },
  );

  it('never throws and never lets a wrong kind of value through', () => {
    const junk = fc.anything({ maxDepth: 2 });
    fc.assert(
      fc.property(
        fc.constantFrom('head', 'cap', 'paper', 'unit', 'cap.values', 'cap.values.strap'),
        junk,
        (path, value) => {
          const { spec } = decodeSpec(damaged(path, value));
          expect(typeof spec.cap.values.strap).toBe('boolean');
          expect(spec.head.readings.every(Number.isFinite) && spec.head.readings.length > 0).toBe(true);
          expect(Object.keys(spec.cap.values)).toEqual(
            expect.arrayContaining(Object.keys(flatTopParameters)),
          );
          expect(Object.values(spec.cap.values).every(isValue)).toBe(true);
          expect(Number.isFinite(spec.paper.margin)).toBe(true);
        },
      ),
    );
  });
});
