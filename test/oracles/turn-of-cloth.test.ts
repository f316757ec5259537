import { describe, expect, test } from 'vitest';
import { flatTop } from '../../src/caps/flat-top/flat-top.ts';
import { defaultsOf, type Values } from '../../src/caps/parameter.ts';
import { fetchStyles } from '../../src/caps/registry.ts';
import type { CapDraft, Head, Style } from '../../src/caps/style.ts';
import { clothKinds } from '../../src/cloth/kinds.ts';
import { defaultSpec } from '../../src/design/default-spec.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import type { Cloth } from '../../src/pattern/piece.ts';
import { checkSeams } from '../../src/pattern/seam-check.ts';
import { CORDUROY, clothsOf, headIn, PLAIN, WINTER } from '../caps/cloths.ts';
import { derive } from '../design/derive.ts';
import { expectNear } from '../geometry/near.ts';

const styles = await fetchStyles();
const HEAD: Head = { girth: 574, ratio: 0.8, arc: 0.5625 * 574 };

const draftIn = (cloths: typeof PLAIN, style: Style, wish: Values = {}): CapDraft => {
  const values = { ...defaultsOf(style.parameters), ...wish } as Values;
  const head = headIn(cloths, HEAD, style, values);
  expect(style.problems(values, head), style.id).toEqual([]);
  return style.draft(values, head);
};
const seamOf = ({ pattern }: CapDraft, id: string) => {
  const found = checkSeams(pattern).find(({ seam }) => seam.id === id);
  if (!found) throw new Error(`no seam ${id}`);
  return found;
};
const pieceOf = ({ pattern }: CapDraft, id: string) => pattern.pieces.find((piece) => piece.id === id)!;
const edge = (draft: CapDraft, id: string, name: string): number =>
  pathLength(pieceOf(draft, id).outline.find((e) => e.name === name)!.path);
const measure = (draft: CapDraft, id: string, name: string): number =>
  pathLength(pieceOf(draft, id).dimensions.find((d) => d.name === name)!.along);

describe('girth against the cloth that lies inside', () => {
  test('every millimetre of a layer inside the shell takes 6.3 mm of girth more (common practice), in every style', () => {
    for (const style of styles) {
      const inside = style.inside(defaultsOf(style.parameters) as Values);
      const before = seamOf(draftIn(CORDUROY, style), 'lowerEdge').a;
      for (const cloth of new Set(inside)) {
        const thicker = {
          ...CORDUROY,
          [cloth]: { ...CORDUROY[cloth], thickness: CORDUROY[cloth].thickness + 1 },
        };
        const after = seamOf(draftIn(thicker, style), 'lowerEdge').a;
        const layers = inside.filter((one) => one === cloth).length + (cloth === 'outer' ? 1 / 2 : 0);
        expectNear((after - before) / layers, 6.3, 0.05);
      }
    }
  });

  test('a lined winter cap has 15 to 20 mm of ease inside, and the turn of its cloth on top of that (common practice)', () => {
    for (const ease of [15, 20]) {
      for (const style of styles) {
        const draft = draftIn(WINTER, style, { ease });
        expectNear(draft.finishedGirth - HEAD.girth, ease, 1e-9);
        expect(seamOf(draft, 'lowerEdge').a).toBeGreaterThan(HEAD.girth + 20);
      }
      const cap = draftIn(WINTER, flatTop as unknown as Style, { ease });
      // Melton 2 mm, lining 1 mm, buckram 0.7 mm: to the middle of the melton there are 2.7 mm, and 6.3 mm of girth for each.
      expectNear(seamOf(cap, 'lowerEdge').a - HEAD.girth - ease, 2.7 * 6.3, 0.1);
      expectNear(seamOf(cap, 'lowerEdge').b - HEAD.girth - ease, 0.5 * 6.3, 0.1);
    }
  });

  test('a cap 55.9 cm round inside, with 1.3 mm of cloth round it, is stitched at 56.7 cm: two π times the thickness', () => {
    const cloths = clothsOf({ outer: 1.6, lining: 0.2, interlining: 0.3, stiffener: 0 });
    const { draft } = derive({ ...defaultSpec, cloths });
    expect((draft!.finishedGirth / 10).toFixed(1)).toBe('55.9');
    expect(draft!.turn.depth).toBeCloseTo(1.3, 9);
    expect((edge(draft!, 'band', 'bottom') / 10).toFixed(1)).toBe('56.7');
  });
});

describe('the lining against its shell', () => {
  /** Common practice: lining crown girth = shell girth − 2π (half shell + interlining + half lining). */
  const less = (outer: number, interlining: number, lining: number) =>
    2 * Math.PI * (outer / 2 + interlining + lining / 2);

  test('is smaller round the crown by 2π (half shell + interlining + half lining), besides what is taken so that it does not bag', () => {
    const cases: readonly [string, Values, number][] = [
      ['flat-top', {}, less(1.5, 0.3, 0.2)],
      ['beret', { beretCrown: 'disc' }, less(1.5, 0.3, 0.2)],
      ['pillbox', { crownBody: 'interlining' }, less(1.5, 0.3, 0.2)],
      ['pillbox', { crownBody: 'none' }, less(1.5, 0, 0.2)],
      ['bucket', { reversible: false }, less(1.5, 0, 0.2)],
    ];
    for (const [id, wish, difference] of cases) {
      const style = styles.find((one) => one.id === id)!;
      const draft = draftIn(CORDUROY, style, { ...wish, lining: true, liningTake: 0 });
      expectNear(edge(draft, 'tip', 'rim') - edge(draft, 'liningTip', 'rim'), difference, 0.05);
    }
  });

  test('is so at the lower edge and at the widest place of gores too', () => {
    for (const [wish, difference] of [
      [{ edge: 'band' }, less(1.5, 0.3, 0.2)],
      [{ edge: 'sweatband' }, less(1.5, 0, 0.2)],
    ] as const) {
      const style = styles.find(({ id }) => id === 'gored')!;
      const draft = draftIn(CORDUROY, style, { ...wish, lining: true, liningTake: 0 });
      const gores = pieceOf(draft, 'gore').cuts[0]!.count;
      for (const name of ['Lower edge', 'Widest']) {
        const apart = gores * (measure(draft, 'gore', name) - measure(draft, 'liningGore', name));
        expectNear(apart, difference, 0.05);
      }
    }
  });
});

test('the lining’s top of a flat cap is narrower than the shell’s by the cloth between the two at either side, and by what is taken so that it does not bag', () => {
  const style = styles.find(({ id }) => id === 'three-piece')!;
  for (const liningTake of [0, 6]) {
    const draft = draftIn(CORDUROY, style, { lining: true, liningTake });
    const widths = ['top', 'liningTop'].map((id) => measure(draft, id, 'Widest'));
    // Half of 1.5 mm of corduroy and half of 0.2 mm of satin lie between the middles of the two.
    expectNear(widths[0]! - widths[1]!, 2 * 0.85 + liningTake, 0.05);
  }
});

describe('the upper cover of a visor', () => {
  const visored = styles.filter(({ parameters }) => 'visorSource' in parameters);
  const inOuter = (outer: number) => clothsOf({ outer, lining: 0.2, interlining: 0.2, stiffener: 1.8 });
  const further = (outer: number, style: Style, source: string): number => {
    const draft = draftIn(inOuter(outer), style, { visorSource: source });
    return measure(draft, 'visor', 'Depth') - measure(draft, 'visorUnder', 'Depth');
  };

  test('stands out 1 to 3 mm further than the under one, by the thickness of cap cloths (common practice), between π/2 and π thicknesses', () => {
    expect(visored.length).toBeGreaterThanOrEqual(4);
    for (const style of visored) {
      for (const source of ['drafted', 'insert']) {
        for (const outer of [0.7, 0.8, 1.2, 1.5, 1.9]) {
          const out = further(outer, style, source);
          expect(out).toBeGreaterThanOrEqual(1 - 0.01);
          expect(out).toBeLessThanOrEqual(3 + 0.01);
          expect(out / outer).toBeGreaterThan(Math.PI / 2 - 0.01);
          expect(out / outer).toBeLessThan(Math.PI);
        }
      }
    }
  });

  test('meets the same stretch of the cap as the under one', () => {
    for (const style of visored) {
      for (const source of ['drafted', 'insert']) {
        const draft = draftIn(CORDUROY, style, { visorSource: source });
        expectNear(edge(draft, 'visorUnder', 'inner'), edge(draft, 'visor', 'inner'), 0.02);
      }
    }
  });

  test('is one with the under cover where the cloth is not to count', () => {
    for (const style of visored) {
      const draft = draftIn(PLAIN, style, { visorSource: 'drafted' });
      expect(pieceOf(draft, 'visorUnder')).toBeUndefined();
      expect(pieceOf(draft, 'visor').cuts[0]).toEqual({ cloth: 'outer', count: 2 });
    }
  });
});

/** How far a cloth is eased without tucks, of the shorter edge: common practice, partly from memory. */
const EASES: Readonly<Record<string, number>> = {
  denim: 0.02,
  canvas: 0.02,
  'quilting-cotton': 0.04,
  poplin: 0.04,
  linen: 0.04,
  'fine-corduroy': 0.04,
  'wide-corduroy': 0.04,
  tweed: 0.08,
  melton: 0.08,
};

test('no cloth is eased further for its thickness than it will go without tucks', () => {
  for (const [kind, most] of Object.entries(EASES)) {
    const outer = clothKinds.find(({ id }) => id === kind)!.thickness;
    // A pillbox is stiffened with buckram, not with visor sheet.
    const cloths = clothsOf({ outer, lining: 0.15, interlining: 0.2, stiffener: 0.7 });
    for (const style of styles) {
      const seams = checkSeams(draftIn(cloths, style).pattern);
      const bare = checkSeams(draftIn(PLAIN, style).pattern);
      for (const { seam, ease } of seams) {
        const gathered = bare.find((one) => one.seam.id === seam.id)!.ease;
        const eased = Math.abs(Math.log((1 + ease) / (1 + gathered)));
        expect(eased, `${seam.name} of a ${style.name} in ${kind}`).toBeLessThan(most);
      }
    }
  }
});

test('the cloths that are said to lie inside are those that the pieces there are cut from', () => {
  for (const style of styles) {
    const draft = draftIn(CORDUROY, style);
    const [first] = style.inside(defaultsOf(style.parameters) as Values);
    const lies = ['sweatband', 'liningBand', 'casing'].flatMap((id) => pieceOf(draft, id) ?? []).at(0);
    const cut: Cloth = lies!.cuts[0]!.cloth;
    expect(first, style.id).toBe(cut);
  }
});

test('the default cap is drafted in cloth of no thickness: the plain numbers', () => {
  const { draft } = derive(defaultSpec);
  expectNear(edge(draft!, 'band', 'bottom'), draft!.finishedGirth, 1e-9);
});
