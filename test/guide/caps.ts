import { type Condition, defaultsOf, type ParameterTable, type Values } from '../../src/caps/parameter.ts';
import { fetchStyles } from '../../src/caps/registry.ts';
import type { CapDraft, Head, Style } from '../../src/caps/style.ts';
import type { ClothSpec, Cloths } from '../../src/cloth/cloth.ts';
import { cutPattern } from '../../src/cloth/grown.ts';
import { clothKinds, clothOfKind } from '../../src/cloth/kinds.ts';
import { turnOfCloth } from '../../src/cloth/turn-of-cloth.ts';
import { defaultSpec } from '../../src/design/default-spec.ts';
import { type Guide, guideOf } from '../../src/guide/guide.ts';
import type { Work } from '../../src/guide/work.ts';
import { checkSeams } from '../../src/pattern/seam-check.ts';

export const head: Omit<Head, 'turn'> = { girth: 560, ratio: 0.8, arc: 315 };

export interface Written {
  readonly name: string;
  readonly style: Style;
  readonly values: Values;
  readonly draft: CapDraft;
  readonly work: Work;
  readonly guide: Guide;
}

export const clothsOf = (kinds: Partial<Record<keyof Cloths, string>>): Cloths => {
  const one = (name: keyof Cloths): ClothSpec => {
    const kind = clothKinds.find(({ id }) => id === kinds[name]);
    return kind ? clothOfKind(kind, defaultSpec.cloths[name]) : defaultSpec.cloths[name];
  };
  return {
    outer: one('outer'),
    lining: one('lining'),
    interlining: one('interlining'),
    stiffener: one('stiffener'),
  };
};

/** The order of work for a cap, or null where its wishes cannot be sewn. */
export const written = (
  style: Style,
  wishes: Values,
  cloths: Cloths = defaultSpec.cloths,
): Written | null => {
  const values = { ...defaultsOf(style.parameters), ...wishes };
  const dressed = { ...head, turn: turnOfCloth(cloths, style.inside(values)) };
  if (style.problems(values, dressed).length > 0) return null;
  const draft = style.draft(values, dressed);
  const { pattern, finishedGirth } = draft;
  const work: Work = {
    values,
    pattern,
    cutting: cutPattern(pattern, cloths),
    finishedGirth,
    seams: checkSeams(pattern),
    cloths,
  };
  return { name: `${style.id} ${JSON.stringify(wishes)}`, style, values, draft, work, guide: guideOf(work) };
};

/** One pair of wishes in so many is drafted: enough to meet every mix of parts, few enough to be quick. */
const EVERY = 31;

/** Each of a style's choices, switches and counts of gores, alone or with what its control needs to be shown; and its starts. */
const wishesOf = ({ parameters, starts }: Style): readonly Values[] => [
  ...Object.entries(parameters).flatMap(([key, row]): readonly Values[] => {
    const shown = shownBy(parameters, key);
    if (row.kind === 'choice') return row.options.map(({ value }) => ({ ...shown, [key]: value }));
    if (row.kind === 'switch') return [{ ...shown, [key]: !row.default }];
    if (row.kind === 'count' && key === 'gores')
      return [4, 5, 6, 8, row.max].map((gores) => ({ ...shown, gores }));
    if (key === 'crownGather') return [{ [key]: 0.4 }, { [key]: 0.4, gatherAs: 'pleats' }];
    if (key === 'allowance') return [{ [key]: 12 }];
    if (key === 'stiffenerClearance') return [{ [key]: row.kind === 'length' ? row.max : 0 }];
    return [];
  }),
  ...starts.map(({ values }) => values as Values),
];

/** The values of other rows that a row needs to count. */
const shownBy = (table: ParameterTable, key: string): Values =>
  Object.fromEntries(
    Object.entries(table[key]?.when ?? {}).flatMap(([other, condition]) => [
      ...Object.entries(shownBy(table, other)),
      [other, meeting(condition)] as const,
    ]),
  );

const meeting = (condition: Condition): string | number | boolean => {
  if (typeof condition !== 'object') return condition;
  return 'above' in condition ? condition.above + 0.3 : condition[0]!;
};

/** Cloths that are sewn in different ways. */
const cloths: readonly Cloths[] = [
  clothsOf({
    outer: 'tweed',
    lining: 'satin-lining',
    interlining: 'woven-fusible',
    stiffener: 'visor-sheet',
  }),
  clothsOf({ outer: 'fine-corduroy', lining: 'poplin', interlining: 'canvas', stiffener: 'buckram' }),
  clothsOf({ outer: 'felt', lining: 'silk', interlining: 'woven-fusible', stiffener: 'visor-sheet' }),
];

/**
 * Every style as it is usually made, in two other sets of cloth, with each of its choices, switches and counts, and
 * with some of them two at a time.
 */
export const everyCap = async (): Promise<readonly Written[]> => {
  const caps: (Written | null)[] = [];
  let pairs = 0;
  for (const style of await fetchStyles()) {
    const single = wishesOf(style);
    caps.push(written(style, {}), ...cloths.map((set) => written(style, {}, set)));
    caps.push(...single.map((wishes) => written(style, wishes)));
    for (const [i, a] of single.entries()) {
      for (const b of single.slice(i + 1)) {
        if (++pairs % EVERY === 0) caps.push(written(style, { ...a, ...b }));
      }
    }
  }
  return caps.filter((cap) => cap !== null);
};
