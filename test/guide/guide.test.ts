import { beforeAll, describe, expect, test } from 'vitest';
import { styleIds } from '../../src/caps/registry.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { distance } from '../../src/geometry/point.ts';
import { glossary } from '../../src/guide/glossary.ts';
import { phases, type Step } from '../../src/guide/step.ts';
import type { Piece } from '../../src/pattern/piece.ts';
import type { EdgeUse } from '../../src/pattern/seam.ts';
import { say, type Words } from '../../src/words.ts';
import { everyCap, type Written } from './caps.ts';
import { readingEase } from './flesch.ts';

let caps: readonly Written[] = [];
beforeAll(async () => {
  caps = await everyCap();
}, 30_000);

/** Everything a step says. */
const sentences = (step: Step): readonly Words[] => [...step.words, ...step.checks, ...step.cautions];
const text = (step: Step): string =>
  [`${step.title}.`, ...sentences(step).map((s) => say(s, 'cm'))].join(' ');

const copyOf = ({ piece, copy }: EdgeUse): string => `${piece} ${copy}`;

describe('the order of work', () => {
  test('is there for every style, in many constructions', () => {
    expect(new Set(caps.map(({ style }) => style.id))).toEqual(new Set(styleIds));
    expect(caps.length).toBeGreaterThan(200);
  });

  test('has every seam in exactly one step', () => {
    for (const { name, draft, guide } of caps) {
      const sewn = guide.steps.flatMap(({ seams }) => seams);
      expect([...sewn].sort(), name).toEqual(draft.pattern.seams.map(({ id }) => id).sort());
    }
  });

  test('knows every seam for what it is', () => {
    for (const { name, guide } of caps) {
      expect(
        guide.steps.map(({ title }) => title).filter((title) => title.startsWith('Sew: ')),
        name,
      ).toEqual([]);
    }
  });

  test('runs through its phases one after the other, and no step stands twice', () => {
    for (const { name, guide } of caps) {
      const order = guide.steps.map(({ phase }) => phases.indexOf(phase));
      expect(order, name).toEqual([...order].sort((a, b) => a - b));
      const ids = guide.steps.map(({ id }) => id);
      expect(new Set(ids).size, `${name}: ${ids}`).toBe(ids.length);
    }
  });

  test('uses no piece before it is there: what one side of a seam runs along is joined by then', () => {
    for (const { name, draft, guide } of caps) {
      const known = new Map(draft.pattern.seams.map((seam) => [seam.id, seam]));
      const joined = new Map<string, string>();
      const root = (id: string): string => {
        const next = joined.get(id);
        return next === undefined || next === id ? id : root(next);
      };
      for (const step of guide.steps) {
        for (const id of step.seams) {
          const seam = known.get(id)!;
          for (const side of [seam.a, seam.b]) {
            // Straps are only basted on before the seam that catches their ends.
            const cloth = side.filter(({ piece }) => !/strap|elasticCasing/i.test(piece));
            const parts = new Set(cloth.map((use) => root(copyOf(use))));
            expect(parts.size, `${name}, ${id}: ${[...parts]}`).toBeLessThanOrEqual(1);
          }
          const [first, ...others] = [...seam.a, ...seam.b].map(copyOf);
          for (const other of others) joined.set(root(other), root(first!));
        }
      }
    }
  });

  test('names pieces that are in the pattern, and all that have to be cut', () => {
    const wrong: string[] = [];
    for (const { name, draft, guide } of caps) {
      const ids = new Set(draft.pattern.pieces.map(({ id }) => id));
      for (const step of guide.steps) {
        const missing = step.pieces.filter((piece) => !ids.has(piece));
        if (missing.length > 0) wrong.push(`${name}, ${step.id}: ${missing}`);
      }
      const cut = guide.steps.find(({ id }) => id === 'cut')!.pieces;
      expect(cut).toEqual(draft.pattern.pieces.filter(({ cuts }) => cuts.length > 0).map(({ id }) => id));
      const used = new Set(
        guide.steps.filter(({ phase }) => phase !== 'prepare').flatMap(({ pieces }) => pieces),
      );
      const idle = cut.filter((id) => !used.has(id));
      if (idle.length > 0) wrong.push(`${name}: ${idle} is cut for nothing`);
    }
    expect(wrong).toEqual([]);
  });

  test('goes by marks that are on the pieces', () => {
    const wrong = new Set<string>();
    for (const { name, draft, guide } of caps) {
      for (const step of guide.steps) {
        for (const mark of step.marks) {
          const piece = draft.pattern.pieces.find(({ id }) => id === mark.piece);
          if (!namesOn(piece).includes(mark.name))
            wrong.add(`${name}, ${step.id}: ${mark.piece}, ${mark.name}`);
        }
        // A step that speaks of a mark lists it.
        const listed = step.marks.map((mark) => mark.name).join(' ');
        for (const [word, mark] of Object.entries(spoken)) {
          if (text(step).includes(word) && !listed.includes(mark))
            wrong.add(`${name}, ${step.id} says ${word}`);
        }
      }
    }
    expect([...wrong]).toEqual([]);
  });

  test('gives no number that is not the draft’s or a setting', () => {
    const wrong = new Set<string>();
    for (const { name, draft, guide, values, work } of caps) {
      const numbers = [...numbersOf(draft, values), ...clothNumbers(work)];
      for (const step of guide.steps) {
        for (const sentence of sentences(step)) {
          // Needle numbers are the only figures in plain text.
          const plain = sentence.filter((part) => typeof part === 'string').join(' ');
          const figures = /\d/.test(plain.replace(/\b(70\/10|80\/12|90\/14|100\/16|110\/18)\b/g, ''));
          const quantities = sentence.filter((part) => typeof part !== 'string');
          const known = quantities.every((part) => {
            const [n] = Object.values(part) as [number];
            return numbers.some((one) => Math.abs(one - n) < 1e-6);
          });
          if (figures || !known) wrong.add(`${name}, ${step.id}: ${say(sentence, 'cm')}`);
        }
      }
    }
    expect([...wrong]).toEqual([]);
  });

  test('reads easily: Flesch 60 and more for every step, in either unit, and for every word explained', () => {
    const seen = new Map<string, number>();
    for (const { guide } of caps) {
      for (const step of guide.steps) {
        for (const unit of ['cm', 'in'] as const) {
          const all = sentences(step)
            .map((s) => say(s, unit))
            .join(' ');
          if (!seen.has(all)) seen.set(all, readingEase(all));
        }
      }
    }
    expect(seen.size).toBeGreaterThan(50);
    expect([...seen].filter(([, ease]) => !(ease >= 60))).toEqual([]);
    for (const { word, meaning } of glossary) {
      expect(meaning.length, word).toBeGreaterThan(10);
    }
    expect(readingEase(glossary.map(({ meaning }) => meaning).join(' '))).toBeGreaterThanOrEqual(60);
  });

  test('keeps sentences short: none over 25 words', () => {
    const long = new Set<string>();
    for (const { guide } of caps) {
      for (const step of guide.steps) {
        for (const sentence of sentences(step).flatMap((s) => say(s, 'cm').split(/[.:](?: |$)/))) {
          if (sentence.split(/\s+/).length > 25) long.add(sentence);
        }
      }
    }
    expect([...long]).toEqual([]);
  });

  test('explains words that it uses', () => {
    const all = caps.flatMap(({ guide }) => guide.steps.map(text)).join(' ');
    for (const { word, found } of glossary) expect(found.test(all), `${word} is used`).toBe(true);
  });
});

describe('a different construction', () => {
  const of = (style: string, wishes: object): Written =>
    caps.find((cap) => cap.style.id === style && sameWishes(cap, wishes))!;
  const ids = (cap: Written): readonly string[] => cap.guide.steps.map(({ id }) => id);

  test('without a lining has no lining steps, but a facing to turn in', () => {
    const cap = of('flat-top', { lining: false });
    expect(ids(cap)).toContain('facing');
    expect(ids(cap)).not.toContain('turn');
    expect(ids(cap)).not.toContain('liningCrown');
    expect(ids(of('flat-top', {}))).toContain('turn');
  });

  test('without a strap has neither strap nor buttons', () => {
    expect(ids(of('flat-top', { strap: false }))).not.toContain('buttons');
    expect(ids(of('flat-top', {}))).toContain('buttons');
  });

  test('gathered or pleated has a step for that, plain has none', () => {
    expect(ids(of('flat-top', { crownGather: 0.4 }))).toContain('bandToSideGathers');
    expect(ids(of('flat-top', { crownGather: 0.4, gatherAs: 'pleats' }))).toContain('bandToSidePleats');
    expect(ids(of('flat-top', {})).join()).not.toMatch(/Gathers|Pleats/);
  });

  test('without a visor has no step for one', () => {
    for (const step of of('gored', { visorSource: 'none' }).guide.steps)
      expect(text(step)).not.toMatch(/visor/i);
  });

  test('with a bought insert slips that in', () => {
    const cap = of('flat-top', { visorSource: 'insert' });
    expect(text(cap.guide.steps.find(({ id }) => id === 'stiffenVisor')!)).toContain('Slip in the insert');
  });

  test('reversible is turned through a gap once both brims are sewn together', () => {
    const order = ids(of('bucket', { reversible: true }));
    expect(order.indexOf('turn')).toBe(order.indexOf('brimEdge') + 1);
    expect(order).not.toContain('turnIn');
  });

  test('with an elastic back has a casing, with a strap the strap, and both are held before the sweatband', () => {
    const [elastic, strap] = [ids(of('ball', { backFastening: 'elastic' })), ids(of('ball', {}))];
    expect(elastic).toContain('elasticCasing');
    expect(strap).toContain('backStrap');
    for (const order of [elastic, strap])
      expect(order.indexOf('strapOn')).toBe(order.indexOf('lowerEdge') - 1);
  });

  test('tied behind says that a child must not have it', () => {
    const cap = of('scrub', { backTie: 'ties' });
    const step = cap.guide.steps.find(({ id }) => id === 'tie')!;
    expect(step.cautions.map((s) => say(s, 'cm')).join()).toMatch(/child.*strangle/);
  });
});

const sameWishes = (cap: Written, wishes: object): boolean =>
  cap.name === `${cap.style.id} ${JSON.stringify(wishes)}` ||
  JSON.stringify(Object.entries(JSON.parse(cap.name.slice(cap.style.id.length + 1))).sort()) ===
    JSON.stringify(Object.entries(wishes).sort());

const namesOn = (piece: Piece | undefined): readonly string[] => [
  ...(piece?.notches ?? []).map(({ name }) => name),
  ...(piece?.marks ?? []).flatMap((mark) => ('name' in mark ? [mark.name] : [])),
];

/** What is said of a mark, and what the mark is called. */
const spoken: Readonly<Record<string, string>> = {
  'turning gap': 'turning gap',
  buttonhole: 'buttonhole',
  'eyelet mark': 'eyelet',
  'Fold each pleat': 'pleat',
  'visor ends': 'visor end',
  'middles of the quarters': 'middle of',
  'widest places': 'widest place',
  'between the marks': 't',
};

const clothNumbers = ({ cloths }: Written['work']): readonly number[] =>
  Object.values(cloths).flatMap(({ shrinkLength, shrinkWidth }) => [shrinkLength, shrinkWidth]);

/** Distances that sewing advice may name besides the draft's own, mm: common practice, trade charts and books. */
const SETTINGS = [2, 6, 6.35, 12.7];

/** All lengths and ratios of a draft, measured here. */
const numbersOf = (
  { pattern, finishedGirth }: Written['draft'],
  values: Written['values'],
): readonly number[] => {
  const edges = new Map(
    pattern.pieces.flatMap((p) => p.outline.map((e) => [`${p.id} ${e.name}`, pathLength(e.path)] as const)),
  );
  const chain = (uses: readonly EdgeUse[]): number =>
    uses.reduce((sum, { piece, edge, from = 0, to = edges.get(`${piece} ${edge}`)! }) => sum + to - from, 0);
  return [
    ...SETTINGS,
    finishedGirth,
    ...Object.values(pattern.allowances),
    ...pattern.seams.flatMap(({ a, b, ease }) => [chain(a), chain(b), ease]),
    ...pattern.pieces.flatMap(({ marks }) => marks.flatMap(markNumbers)),
    ...buttonsApart(pattern.pieces),
    ...pattern.pieces.flatMap(({ notes }) =>
      notes.flatMap((note) =>
        note.flatMap((q) => (typeof q === 'string' ? [] : (Object.values(q) as number[]))),
      ),
    ),
    ...Object.values(values).filter((v) => typeof v === 'number'),
  ];
};

const markNumbers = (mark: Piece['marks'][number]): readonly number[] => {
  if (mark.kind === 'stretch') return [pathLength(mark.path)];
  if (mark.kind === 'buttonhole') return [distance(mark.from, mark.to)];
  if (mark.kind === 'eyelet' || mark.kind === 'button') return [mark.diameter];
  return [];
};

const buttonsApart = (pieces: readonly Piece[]): readonly number[] =>
  pieces.flatMap(({ marks }) => {
    const at = marks.flatMap((mark) => (mark.kind === 'button' ? [mark.at] : []));
    return at.length === 2 ? [distance(at[0]!, at[1]!)] : [];
  });
