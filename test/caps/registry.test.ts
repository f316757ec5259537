import { describe, expect, test } from 'vitest';
import { coaxingOf } from '../../src/caps/coaxing.ts';
import { defaultsOf, type Values } from '../../src/caps/parameter.ts';
import { fetchStyles, styleIds } from '../../src/caps/registry.ts';
import { CORDUROY, headIn, PLAIN } from './cloths.ts';
import { expectSound, HEADS } from './family.ts';

const styles = await fetchStyles();

describe('the family', () => {
  test('stands in the registry under the names that specs are saved with', () => {
    expect(styles.map(({ id }) => id)).toEqual(styleIds);
    expect(new Set(styles.map(({ name }) => name)).size).toBe(styles.length);
  });

  test('asks for ease first, and for three sizes that a hobbyist would drag', () => {
    for (const { id, parameters } of styles) {
      const [first, ...others] = Object.entries(parameters).filter(
        ([, p]) => p.kind !== 'choice' && p.kind !== 'switch',
      );
      expect(first?.[0], id).toBe('ease');
      expect(others.length, id).toBeGreaterThanOrEqual(2);
    }
  });

  test('means the same by the same name, so that a value can be kept when the style changes', () => {
    const known = new Map<string, { readonly kind: string; readonly label: string; readonly from: string }>();
    for (const { id, parameters } of styles) {
      for (const [key, { kind, label }] of Object.entries(parameters)) {
        const before = known.get(key);
        if (before)
          expect({ kind, label }, `${key} of ${id} and of ${before.from}`).toEqual({
            kind: before.kind,
            label: before.label,
          });
        else known.set(key, { kind, label, from: id });
      }
    }
  });

  test('has defaults within its ranges, and usual ranges within the possible ones', () => {
    for (const { id, parameters } of styles) {
      for (const [key, p] of Object.entries(parameters)) {
        if (!('step' in p)) continue;
        const [least, most] = p.usual ?? [p.default, p.default];
        const row = [p.min, least, most, p.max];
        expect(row, `${id}.${key}`).toEqual(row.toSorted((a, b) => a - b));
        expect(p.default).toBeGreaterThanOrEqual(p.min);
        expect(p.default).toBeLessThanOrEqual(p.max);
      }
    }
  });

  test('is drafted in cloth of no thickness as by the plain rules of thumb, and larger in thick cloth', () => {
    for (const style of styles) {
      for (const start of [{}, ...style.starts.map(({ values }) => values)]) {
        const values = { ...defaultsOf(style.parameters), ...start } as Values;
        const bare = style.draft(values, HEADS[3]!);
        const plain = style.draft(values, headIn(PLAIN, HEADS[3]!, style, values));
        expect(JSON.stringify(plain) === JSON.stringify(bare), style.id).toBe(true);
        const thick = style.draft(values, headIn(CORDUROY, HEADS[3]!, style, values));
        expect(thick.finishedGirth, style.id).toBe(bare.finishedGirth);
        expect(JSON.stringify(thick.pattern) === JSON.stringify(bare.pattern), style.id).toBe(false);
      }
    }
  }, 60_000);

  test('shows a control only by the value of another control of the same style', () => {
    for (const { id, parameters } of styles) {
      for (const [key, { when }] of Object.entries(parameters)) {
        for (const other of Object.keys(when ?? {})) expect(parameters[other], `${id}.${key}`).toBeDefined();
      }
    }
  });

  test('drafts every style as it comes for every head, and says in a sentence what tells it from its neighbours', () => {
    for (const style of styles) {
      for (const head of HEADS)
        expect(style.problems(defaultsOf(style.parameters), head), style.id).toEqual([]);
      expect(style.tells, style.id).toMatch(/^[A-Z].{20,}\.$/);
    }
  });

  test('is sound as it comes, or as it is mended, on the longest and the roundest heads, of a child of two and of the largest adult', () => {
    // Breadth by length of 6,068 adults from 0.66 to 0.961, girths up to 635 mm: ANSUR II, 2012.
    for (const style of styles) {
      const usual = defaultsOf(style.parameters) as Values;
      for (const girth of [HEADS[0]!.girth, 635]) {
        for (const ratio of [0.66, 0.961]) {
          const head = { girth, ratio, arc: 0.5625 * girth };
          // What is too wide for the narrowest head is refused with what is not.
          const mended = style
            .problems(usual, head)
            .map(({ field, nearest }) => [field.replace('cap.', ''), nearest!] as const);
          const values = { ...usual, ...Object.fromEntries(mended) };
          expect(style.problems(values, head), `${style.id} ${girth} ${ratio}`).toEqual([]);
          expectSound(style.draft(values, head));
          const places = style
            .form(values, head)
            .strips.flatMap(({ strip }) =>
              [...strip.left, ...strip.right].flatMap(({ x, y, z }) => [x, y, z]),
            );
          expect(places.every(Number.isFinite), style.id).toBe(true);
        }
      }
    }
  }, 60_000);

  test('names where to steam or stretch whatever does not roll flat by itself', () => {
    for (const style of styles) {
      const hard = coaxingOf(style.form(defaultsOf(style.parameters), HEADS[3]!)).filter(
        ({ effort }) => effort === 'steam',
      );
      if (hard.length > 0)
        expect(style.coaxing, `${style.id}: ${hard.map(({ piece }) => piece)}`).toBeDefined();
    }
  });
});
