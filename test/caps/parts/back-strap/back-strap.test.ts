import { describe, expect, it } from 'vitest';
import { defaultsOf } from '../../../../src/caps/parameter.ts';
import { backStrap, reachOfFastening, roomOf } from '../../../../src/caps/parts/back-strap/back-strap.ts';
import { backStrapParameters } from '../../../../src/caps/parts/back-strap/parameters.ts';
import { backStrapProblems } from '../../../../src/caps/parts/back-strap/problems.ts';
import { TUCK } from '../../../../src/caps/parts/back-strap/tuck.ts';
import { pathLength } from '../../../../src/geometry/measure.ts';
import { walker } from '../../../../src/pattern/chain.ts';
import { expectNear } from '../../../geometry/near.ts';

const strap = defaultsOf(backStrapParameters);
const elastic = { ...strap, backFastening: 'elastic' } as const;
const WIDTH = 90;

describe('the fastening of an opening at the back', () => {
  it('closes the way across the opening on both layers: drawn in by a strap, whole with an elastic', () => {
    for (const [values, across] of [
      [{ ...strap, backRoom: 25 }, WIDTH - 25],
      [{ ...strap, backRoom: 0 }, WIDTH],
      [elastic, WIDTH],
    ] as const) {
      const { pieces, outer, inner } = backStrap(values, WIDTH);
      const walk = walker(pieces);
      for (const layer of [outer, inner]) {
        expectNear(walk([layer.toRight]).length, across / 2, 1e-9);
        expectNear(walk([layer.fromLeft]).length, across / 2, 1e-9);
      }
    }
  });

  it('goes less far round inside than outside where cloth lies between', () => {
    for (const values of [strap, elastic]) {
      const { pieces, outer, inner } = backStrap(values, WIDTH, 0.98);
      const walk = walker(pieces);
      expectNear(walk([inner.toRight]).length, 0.98 * walk([outer.toRight]).length, 1e-9);
      expectNear(walk([inner.fromLeft]).length, 0.98 * walk([outer.fromLeft]).length, 1e-9);
    }
  });

  it('marks where it meets the centre back and the edge of the opening on every edge that is sewn there', () => {
    for (const values of [strap, elastic]) {
      const { pieces, outer, inner } = backStrap(values, WIDTH);
      const walk = walker(pieces);
      for (const { toRight, fromLeft } of [outer, inner]) {
        const [right, left] = [walk([toRight]), walk([fromLeft])];
        const stops = [...right.stops.map((s) => s.at), ...left.stops.map((s) => left.length - s.at)];
        expect(stops.map((at) => Math.round(at)).sort((a, b) => a - b)).toEqual([
          0,
          0,
          Math.round(right.length),
          Math.round(right.length),
        ]);
      }
    }
  });
});

describe('a strap in two halves', () => {
  it('still overlaps by twice what was wished when it is let out all the way', () => {
    const { pieces } = backStrap({ ...strap, backOverlap: 14 }, WIDTH);
    const straight = pathLength(pieces[0]!.outline.find(({ name }) => name === 'bottom')!.path);
    expectNear(2 * (straight - TUCK) - WIDTH, 2 * 14, 1e-9);
  });

  it('never reaches past the opening when it is drawn in, or is refused', () => {
    for (let room = 0; room <= 40; room++) {
      for (let overlap = 10; overlap <= 40; overlap++) {
        const values = {
          ...strap,
          backRoom: room,
          backOverlap: overlap,
          openingWidth: WIDTH,
          openingHeight: 50,
        };
        const past = WIDTH / 2 + overlap > WIDTH - room;
        expect(backStrapProblems(values).length > 0, `${room} and ${overlap}`).toBe(past);
      }
    }
  });

  it('adds its room to the crown, and lets the cap out by it', () => {
    expect(roomOf({ ...strap, backRoom: 30 })).toBe(30);
    expect(reachOfFastening({ ...strap, backRoom: 30 }, 570, WIDTH).girth).toBe(600);
  });
});

describe('an elastic', () => {
  it('draws the cap in by its share of the opening and adds nothing to the crown', () => {
    expect(roomOf(elastic)).toBe(0);
    expectNear(reachOfFastening({ ...elastic, elasticStretch: 0.4 }, 570, WIDTH).girth, 570 - 36, 1e-9);
  });

  it('lies in a casing that folds in half, its two long edges on the lower edge', () => {
    const { pieces } = backStrap({ ...elastic, backStrapWidth: 24 }, WIDTH);
    const edge = (name: string) => pathLength(pieces[0]!.outline.find((e) => e.name === name)!.path);
    expectNear(edge('bottom'), WIDTH + 2 * TUCK, 1e-9);
    expectNear(edge('top'), edge('bottom'), 1e-9);
    expectNear(edge('left'), 48, 1e-9);
  });
});
