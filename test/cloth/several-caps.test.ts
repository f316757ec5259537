import { describe, expect, test } from 'vitest';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { fetchStyle, type StyleId } from '../../src/caps/registry.ts';
import { capNames } from '../../src/cloth/cap-names.ts';
import type { ClothSpec } from '../../src/cloth/cloth.ts';
import { type ClothLay, clothLay } from '../../src/cloth/cloth-lay.ts';
import { layName } from '../../src/cloth/lay-name.ts';
import { type LayPiece, layPieces } from '../../src/cloth/lay-pieces.ts';
import { layTask } from '../../src/cloth/lay-task.ts';
import type { LayCap, LayWish } from '../../src/cloth/lay-wish.ts';
import { keptOnFold } from '../../src/cloth/on-fold.ts';
import { defaultSpec } from '../../src/design/default-spec.ts';
import { drawLay } from '../../src/drawing/draw-lay.ts';
import { boxOf } from '../../src/geometry/box.ts';
import { point, rotate } from '../../src/geometry/point.ts';
import { improving } from '../../src/nesting/improve.ts';
import type { Layout } from '../../src/nesting/layout.ts';
import type { Placement, Task } from '../../src/nesting/task.ts';
import { laySet } from '../../src/print/lay-sheets.ts';
import { derive } from '../design/derive.ts';
import { faultsOf } from '../nesting/checker.ts';

const capOf = async (style: StyleId, name: string, count: number): Promise<LayCap> => {
  const values = defaultsOf((await fetchStyle(style)).parameters);
  const { cutting } = derive({ ...defaultSpec, cap: { style, name, values } }).draft!;
  return { name, cutting, count };
};

const CORNET = 'Cornet’s cap';
const HORN = 'Tenor horn’s cap';
const flatTops = await capOf('flat-top', CORNET, 2);
const bucket = await capOf('bucket', HORN, 1);
const caps = [flatTops, bucket];

const wishOf = (change: Partial<ClothSpec> = {}, some: readonly LayCap[] = caps): LayWish => ({
  caps: some,
  cloth: 'outer',
  spec: { ...defaultSpec.cloths.outer, ...change },
});

interface Answer {
  readonly pieces: readonly LayPiece[];
  readonly task: Task;
  readonly layout: Layout;
  readonly lay: ClothLay;
}

/** The lay after so many reports of the search. */
const answerTo = (wish: LayWish, pinned: readonly Placement[] = [], reports = 2): Answer => {
  const pieces = layPieces(wish);
  const task = layTask(pieces, wish.spec, pinned);
  const search = improving(task, 1);
  let layout = search.next().value.layout;
  for (let k = 1; k < reports; k++) layout = search.next().value?.layout ?? layout;
  return { pieces, task, layout, lay: clothLay(wish, pieces, layout) };
};

/** What is wrong by the independent library, the halves on the fold looked at like all others. */
const faults = ({ task, layout }: Answer): readonly string[] => faultsOf({ ...task, pinned: [] }, layout);

const cutFrom = ({ cutting, count }: LayCap): number =>
  count *
  cutting.pieces
    .flatMap(({ cuts }) => cuts.filter(({ cloth }) => cloth === 'outer'))
    .reduce((sum, cut) => sum + cut.count, 0);

const ofCap = (pieces: readonly LayPiece[], name: string) => pieces.filter(({ cap }) => cap === name);

describe('caps of two styles in one lay', { timeout: 60_000 }, () => {
  test('off the bolt lie free of each other, every piece known by its cap', () => {
    const answer = answerTo(wishOf());
    expect(faults(answer)).toEqual([]);
    const laid = answer.lay.laid.map(({ piece }) => piece);
    expect(ofCap(laid, CORNET)).toHaveLength(cutFrom(flatTops));
    expect(ofCap(laid, HORN)).toHaveLength(cutFrom(bucket));
    expect(laid).toHaveLength(cutFrom(flatTops) + cutFrom(bucket));
    expect(laid.map(layName)).toContain('Cornet’s cap: side band');
    for (const { piece, cap } of laid)
      expect(caps.find(({ name }) => name === cap)!.cutting.pieces).toContain(piece);
  });

  test('take less than the one lay after the other', () => {
    const lengthOf = (...some: LayCap[]) => answerTo(wishOf({ cross: true }, some), [], 1).lay.length;
    expect(lengthOf(flatTops, bucket)).toBeLessThan(lengthOf(flatTops) + lengthOf(bucket));
  });

  test('lie on folded cloth, each single piece’s half on the fold beside the others', () => {
    const singles = [{ ...flatTops, count: 1 }, bucket, { ...bucket, name: 'Euphonium’s cap', count: 3 }];
    const answer = answerTo(wishOf({ folded: true }, singles));
    expect(faults(answer)).toEqual([]);
    const halves = answer.lay.laid.filter(({ piece }) => piece.layers === 'on the fold');
    expect(new Set(halves.map(({ piece }) => piece.cap)).size).toBeGreaterThan(1);
    for (const { piece, at } of halves)
      expect(boxOf(piece.polygon).min.y + at.y, layName(piece)).toBeCloseTo(0, 6);
  });

  test('lie on scraps, or it is said whose piece finds no place', () => {
    const square = (side: number) => [point(0, 0), point(side, 0), point(side, side), point(0, side)];
    const onScraps = (...sides: number[]) =>
      answerTo(wishOf({ scraps: sides.map((side) => ({ outline: square(side), flaws: [] })) }), [], 8);
    const enough = onScraps(900, 700);
    expect(faults(enough)).toEqual([]);
    expect(enough.lay.left).toEqual([]);
    const few = onScraps(700, 120);
    expect(faults(few)).toEqual([]);
    expect(few.lay.left.length).toBeGreaterThan(0);
    for (const piece of few.lay.left) expect(layName(piece)).toMatch(/^(Cornet|Tenor horn)’s cap: [a-z]/);
  });
});

describe('halves on the fold', { timeout: 60_000 }, () => {
  const folded = (change: Partial<ClothSpec> = {}) => wishOf({ folded: true, ...change }, singles);
  const singles = ['Cornet', 'Euphonium', 'Bass drum'].map((name) => ({ ...flatTops, name, count: 1 }));
  const half = (name: string) =>
    layPieces(folded()).find(({ cap, layers }) => cap === name && layers === 'on the fold')!;

  test('for which a remnant is too short find no place', () => {
    // A tip is 26 in round and has 1/4 in of allowance: 8.78 in along the fold, with 3 mm between two.
    const across = (26 / Math.PI + 0.5) * 25.4;
    const tipsOn = (length: number) => {
      const answer = answerTo(folded({ length }));
      expect(faults(answer)).toEqual([]);
      return answer.lay.laid.filter(({ piece }) => piece.piece.id === 'tip').length;
    };
    expect(tipsOn(3 * across + 2 * 3 + 1)).toBe(3);
    expect(tipsOn(3 * across + 2 * 3 - 1)).toBe(2);
  });

  test('keep clear of one that a hand has put down', () => {
    const pinned = { piece: half('Euphonium').id, container: 0, rotation: 0, x: 200, y: 0 };
    const answer = answerTo(folded(), [pinned]);
    expect(faults(answer)).toEqual([]);
    expect(answer.layout.placements).toContainEqual(pinned);
  });

  test('slide along the fold wherever a hand takes them, and whole pieces lie where they are put', () => {
    const at = { container: 0, rotation: Math.PI, x: 320, y: 77 };
    const tip = half('Euphonium');
    const low = Math.min(...tip.polygon.map(({ y }) => y));
    const slid = { ...at, piece: tip.id };
    expect(keptOnFold(tip, slid)).toEqual({ ...slid, rotation: 0, y: -low });
    const visor = layPieces(folded()).find(({ piece }) => piece.id === 'visor')!;
    expect(keptOnFold(visor, { ...at, piece: visor.id })).toEqual({ ...at, piece: visor.id });
  });

  test('keep clear of a piece that a hand has put near the fold, turned as it may be', () => {
    const visor = layPieces(folded()).find(({ piece }) => piece.id === 'visor')!;
    const low = Math.min(...visor.polygon.map((p) => rotate(p, Math.PI).y));
    const pinned = { piece: visor.id, container: 0, rotation: Math.PI, x: 200, y: 5 - low };
    expect(faults(answerTo(folded(), [pinned]))).toEqual([]);
  });

  test('are none on scraps, which lie single whatever was said of a width', () => {
    const scraps = [{ outline: [point(0, 0), point(900, 0), point(900, 900), point(0, 900)], flaws: [] }];
    const pieces = layPieces(folded({ scraps }));
    expect(pieces).toHaveLength(3 * cutFrom(singles[0]!));
    expect(new Set(pieces.map(({ layers }) => layers))).toEqual(new Set(['single']));
  });
});

describe('what a lay says of its caps', () => {
  const { lay } = answerTo(wishOf());
  const textsOf = (marks: ReturnType<typeof drawLay>) =>
    marks.flatMap((mark) => (mark.kind === 'text' ? [mark.lines.join(' / ')] : []));

  test('is on every piece that is drawn, where there is more than one', () => {
    const texts = textsOf(drawLay(lay, 0.2));
    expect(texts).toHaveLength(lay.laid.length);
    expect(texts).toContain('Cornet’s cap / Tip');
    for (const text of texts) expect(text).toMatch(/^(Cornet|Tenor horn)’s cap \/ /);
    const alone = answerTo(wishOf({}, [flatTops])).lay;
    expect(textsOf(drawLay(alone, 0.2))).toContain('Tip');
  });

  test('heads its page with all of them and how many there are', () => {
    const heading = {
      cap: CORNET,
      wearer: 'Cornet',
      date: '2026-11-25',
      unit: 'cm',
      finishedGirth: 560,
    } as const;
    const headOf = (one: ClothLay) => textsOf(laySet([one], heading).sheets[0]!.marks)[1];
    expect(headOf(lay)).toContain(`2 × ${CORNET}, ${HORN} · `);
    const alone = answerTo(wishOf({}, [{ ...flatTops, count: 1 }])).lay;
    expect(headOf(alone)).toContain(`${CORNET} · for Cornet · `);
  });

  test('tells caps apart that have no name, or the same', () => {
    const named = (...names: string[]) => capNames(names.map((name) => ({ name })));
    expect(named('Cornet', ' ', 'Cornet')).toEqual(['Cornet', 'Cap 2', 'Cornet (3)']);
  });
});
