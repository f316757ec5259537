import { describe, expect, test } from 'vitest';
import { fetchStyles } from '../../src/caps/registry.ts';
import { pathLength, pointAt } from '../../src/geometry/measure.ts';
import { direction, type Point, subtract } from '../../src/geometry/point.ts';
import type { Piece } from '../../src/pattern/piece.ts';
import { CORDUROY, headIn } from './cloths.ts';
import { HEADS } from './family.ts';
import { usualCaps } from './usual-caps.ts';

const styles = await fetchStyles();
const drafts = styles.flatMap((style) => {
  const headOf = (values: Parameters<typeof style.inside>[0]) => headIn(CORDUROY, HEADS[3]!, style, values);
  return usualCaps(style, headOf).map((values) => ({ values, draft: style.draft(values, headOf(values)) }));
});

const middleOf = (piece: Piece, edge: string): Point => {
  const { path } = piece.outline.find(({ name }) => name === edge)!;
  return pointAt(path, pathLength(path) / 2);
};
const fromTo = (from: string, to: string) => (piece: Piece) =>
  direction(subtract(middleOf(piece, to), middleOf(piece, from)));
const upTheMiddle = ({ centreLines: [middle] }: Piece) =>
  direction(subtract(middle!.at(-1)!.to, middle![0]!.from));
const backToFront = (piece: Piece) => {
  const { path } = piece.outline.find(({ name }) => name === 'rim')!;
  return direction(subtract(pointAt(path, pathLength(path) / 2), pointAt(path, 0)));
};
const upwards = fromTo('bottom', 'top');
/** A side of a flat cap is a half oval: its lower edge from the back to the front, and a seam over it. */
const hasOneLowerEdge = ({ outline }: Piece) => outline.length === 2;
const alongTheHead = ({ outline }: Piece) => {
  const { path } = outline.find(({ name }) => name === 'lower')!;
  return direction(subtract(path.at(-1)!.to, path[0]!.from));
};
const lengthwise = fromTo('left', 'right');
const turnedBy = (row: string) => (piece: Piece, values: Readonly<Record<string, unknown>>) =>
  (values[row] === 'along' ? lengthwise : upwards)(piece);

/**
 * Which way the nap of each piece lies: upwards on what stands up, to the front on what lies level, and along a strip that is not
 * to stretch (common practice).
 */
const LIES: readonly (readonly [
  RegExp,
  (piece: Piece, values: Readonly<Record<string, unknown>>) => number,
])[] = [
  [
    /^(sideBand|side|liningSide)(Front|Back)?$/,
    (piece) => (hasOneLowerEdge(piece) ? alongTheHead : upwards)(piece),
  ],
  [/^brim/, fromTo('outer', 'inner')],
  [/^(gore|liningGore)/, upTheMiddle],
  [/^(tip|liningTip)$/, backToFront],
  [/^(top|liningTop)$/, fromTo('back', 'front')],
  [/^(visor|visorUnder|stiffener)$/, fromTo('inner', 'outer')],
  [/^(sweatband|tie|elasticCasing|strap|backStrap)$/, lengthwise],
  [/^(band|liningBand)$/, turnedBy('bandGrain')],
  [/^casing$/, turnedBy('casingGrain')],
];

describe('the grain of a piece', () => {
  test('lies as the trade lays it, its arrow upwards or to the front, in every style and choice', () => {
    const [wrong, others] = [new Set<string>(), new Set<string>()];
    const met = new Set<RegExp>();
    for (const { values, draft } of drafts) {
      for (const piece of draft.pattern.pieces) {
        const found = LIES.find(([id]) => id.test(piece.id));
        if (found === undefined) {
          others.add(piece.id);
          continue;
        }
        met.add(found[0]);
        const [foot, head] = piece.grain;
        const apart = direction(subtract(head, foot)) - found[1](piece, values);
        if (!(Math.cos(apart) > Math.cos(Math.PI / 36)))
          wrong.add(`${piece.id}: ${(apart * 180) / Math.PI}°`);
      }
    }
    expect([...wrong]).toEqual([]);
    // A binding is told of below; a button is a disc.
    expect([...others].sort()).toEqual(['archBinding', 'topButton']);
    expect(met.size).toBe(LIES.length);
  });

  test('is at 45° in a binding, which has to go round a curve: true bias', () => {
    const bindings = drafts.flatMap(({ draft }) =>
      draft.pattern.pieces.filter(({ id }) => id === 'archBinding'),
    );
    expect(bindings.length).toBeGreaterThan(0);
    for (const binding of bindings) {
      const [foot, head] = binding.grain;
      const apart = direction(subtract(head, foot)) - lengthwise(binding);
      expect(Math.abs(Math.sin(2 * apart))).toBeCloseTo(1, 9);
    }
  });
});
