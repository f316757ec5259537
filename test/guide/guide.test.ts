import { beforeAll, describe, expect, test } from 'vitest';
import { applies } from '../../src/caps/parameter.ts';
import { fetchStyle, styleIds } from '../../src/caps/registry.ts';
import type { ClothSpec } from '../../src/cloth/cloth.ts';
import { glossary } from '../../src/guide/glossary.ts';
import { type Row, rowsOf } from '../../src/guide/rows.ts';
import { phases, type Step } from '../../src/guide/step.ts';
import type { Piece } from '../../src/pattern/piece.ts';
import type { EdgeUse } from '../../src/pattern/seam.ts';
import { say, type Words } from '../../src/words.ts';
import { clothsOf, everyCap, type Written, written } from './caps.ts';
import { readingEase } from './flesch.ts';
import { isTrue } from './numbers.ts';

let caps: readonly Written[] = [];
beforeAll(async () => {
  caps = await everyCap();
}, 60_000);

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

  test('is written with every choice of every style, its switches on and off, and every start that it offers', () => {
    const missing: string[] = [];
    for (const style of new Set(caps.map((cap) => cap.style))) {
      const own = caps.filter((cap) => cap.style === style);
      for (const [key, row] of Object.entries(style.parameters)) {
        const all =
          row.kind === 'choice'
            ? row.options.map(({ value }) => value)
            : row.kind === 'switch'
              ? [true, false]
              : [];
        for (const value of all) {
          if (!own.some(({ values }) => values[key] === value && applies(style.parameters, key, values)))
            missing.push(`${style.id}: ${key} ${value}`);
        }
      }
      for (const { name, values } of style.starts) {
        const wanted = Object.entries(values);
        if (!own.some((cap) => wanted.every(([key, value]) => cap.values[key] === value)))
          missing.push(`${style.id}: ${name}`);
      }
    }
    expect(missing).toEqual([]);
  });

  test('sews each row of stitches that the pieces show, and shows each that it sews', () => {
    const wrong = new Set<string>();
    for (const { name, guide, work } of caps) {
      const key = ({ piece, edge, at }: Row): string => `${piece} ${edge} ${at}`;
      const sewn = guide.steps.flatMap(({ rows }) => rows.map(key));
      const missing = rowsOf(work)
        .map(key)
        .filter((row) => !sewn.includes(row));
      if (missing.length > 0) wrong.add(`${name}: ${missing}`);
      for (const { id, rows, settings } of guide.steps) {
        // A binding is folded over: no line on the flat strip is where it is stitched.
        const told = settings.topstitch !== undefined && id !== 'backOpening';
        const seen = rows.filter(({ at }) => at > 0);
        if (told !== seen.length > 0) wrong.add(`${name}, ${id}`);
        if (told && settings.topstitch !== Math.min(...seen.map(({ at }) => at))) wrong.add(`${name}, ${id}`);
      }
    }
    expect([...wrong]).toEqual([]);
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

  test('gives every number as it is on the pieces: that of the seam, the mark or the row that the sentence speaks of', () => {
    const wrong = new Set<string>();
    let judged = 0;
    for (const cap of caps) {
      for (const step of cap.guide.steps) {
        for (const sentence of sentences(step)) {
          // Needle numbers are the only figures in plain text.
          const plain = sentence.filter((part) => typeof part === 'string').join(' ');
          const figures = /\d/.test(plain.replace(/\b(70\/10|80\/12|90\/14|100\/16|110\/18)\b/g, ''));
          const some = sentence.some((part) => typeof part !== 'string');
          if (some) judged++;
          if (figures || (some && !isTrue(sentence, { step, cap })))
            wrong.add(`${cap.name}, ${step.id}: ${say(sentence, 'cm')}`);
        }
      }
    }
    expect([...wrong]).toEqual([]);
    expect(judged).toBeGreaterThan(3000);
  }, 30_000);

  test('notices a number that belongs to another seam of the same cap, and one that is a tenth of a millimetre off', () => {
    const cap = caps.find(({ name }) => name === 'flat-top {}')!;
    const step = cap.guide.steps.find(({ id }) => id === 'crown')!;
    const check = step.checks.find((s) => say(s, 'cm').startsWith('Both edges'))!;
    const off = (by: number): Words =>
      check.map((part) => (typeof part !== 'string' && 'mm' in part ? { mm: part.mm + by } : part));
    const other = cap.guide.steps.find(({ id }) => id === 'bandToSide')!.checks[0]!;
    expect(isTrue(check, { step, cap })).toBe(true);
    expect(isTrue(off(0.1), { step, cap })).toBe(false);
    expect(isTrue(other, { step, cap })).toBe(false);
    expect(isTrue([...check, ' Or so.'], { step, cap })).toBe(false);
  });

  test('says how long an edge is while it is sewn, where its cloth has still to shrink', async () => {
    const flatTop = await fetchStyle('flat-top');
    const corduroy = clothsOf({ outer: 'fine-corduroy' });
    const checks = (cap: Written | null, id: string): readonly string[] =>
      cap!.guide.steps.find((one) => one.id === id)!.checks.map((check) => say(check, 'cm'));
    const raw = written(flatTop, {}, corduroy);
    // The grain runs along the band: it is longer by what the length takes. The lining has shrunk already.
    const sewn = raw!.work.seams.find(({ seam }) => seam.id === 'lowerEdge')!;
    const [now, then, lining] = [sewn.a / (1 - corduroy.outer.shrinkLength), sewn.a, sewn.b].map((length) =>
      (length / 10).toFixed(1),
    );
    expect(checks(raw, 'lowerEdge')).toContain(
      `One edge is ${now} cm long now, the other ${lining} cm. Ease the longer one in. After the wash they are ${then} cm and ${lining} cm.`,
    );
    expect(checks(raw, 'look').join()).toContain('after its first wash');
    // What lies between is not what the wash makes smaller.
    const fusible = written(flatTop, {}, clothsOf({ interlining: 'woven-fusible' }));
    expect(fusible!.work.cutting).not.toBe(fusible!.work.pattern);
    expect(checks(fusible, 'look').join()).not.toContain('wash');
    const washed = written(flatTop, {}, { ...corduroy, outer: { ...corduroy.outer, washed: true } });
    expect(checks(washed, 'lowerEdge')).toContain(
      `One edge is ${then} cm long, the other ${lining} cm. Ease the longer one in.`,
    );
    expect(checks(washed, 'look').join()).not.toContain('wash');
  });

  test('lets only cloth lie another way that is the same turned after its first wash', async () => {
    const flatTop = await fetchStyle('flat-top');
    const cutting = (change: Partial<ClothSpec>): string => {
      const { outer, ...others } = clothsOf({});
      const cap = written(flatTop, {}, { ...others, outer: { ...outer, bias: true, ...change } })!;
      return text(cap.guide.steps.find(({ id }) => id === 'cut')!);
    };
    const unlike = { shrinkLength: 0.05, shrinkWidth: 0.02 };
    const said = /The outer cloth.* may lie another way/;
    expect(cutting(unlike)).not.toMatch(said);
    expect(cutting({ ...unlike, washed: true })).toMatch(said);
    expect(cutting({ shrinkLength: 0.05, shrinkWidth: 0.05 })).toMatch(said);
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
