import { describe, expect, test } from 'vitest';
import { goreFront, goreLowerEdge, goreStrips } from '../../../../src/caps/parts/gore/form.ts';
import { goreReach } from '../../../../src/caps/parts/gore/gore-reach.ts';
import {
  type FrontSeam,
  type GoredCrownWish,
  goreAtBack,
  goredCrown,
} from '../../../../src/caps/parts/gore/gored-crown.ts';
import { pathLength } from '../../../../src/geometry/measure.ts';
import { distance3 } from '../../../../src/geometry/space.ts';
import { walker } from '../../../../src/pattern/chain.ts';

const COUNTS = [4, 5, 6, 7, 8, 9, 10, 11, 12];
const FRONTS: readonly FrontSeam[] = ['seam', 'panel'];
const GIRTH = 590;

const wishOf = (gores: number, frontSeam: FrontSeam): GoredCrownWish => ({
  gores,
  frontSeam,
  reach: goreReach({ gores, girth: GIRTH, length: 190, fullness: 60, widest: 0.3 }),
  kindOf: () => ({ id: 'gore', name: 'Gore', cloths: ['outer'] }),
  lower: 'band',
});
const CROWNS = COUNTS.flatMap((gores) => FRONTS.map((front) => wishOf(gores, front)));

describe('a crown of gores', () => {
  test('sews both long edges of every gore once, from the lower edge to the tip', () => {
    for (const wish of CROWNS) {
      const { seams, pieces } = goredCrown(wish);
      const uses = seams.flatMap(({ a, b }) => [...a, ...b]).map(({ copy, edge }) => `${copy} ${edge}`);
      const wanted = Array.from({ length: wish.gores }, (_, i) => [`${i} left`, `${i} right`]).flat();
      expect(uses.toSorted()).toEqual(wanted.toSorted());
      expect(pieces.map(({ cuts }) => cuts)).toEqual([[{ cloth: 'outer', count: wish.gores }]]);
    }
  });

  test('joins each gore to its neighbour, pairs first, and closes with one run over the middle', () => {
    for (const wish of CROWNS) {
      const { seams } = goredCrown(wish);
      const pairs = new Set(
        seams.flatMap(({ a, b }) =>
          a.map((use, i) => [use.copy, b[i]!.copy].toSorted((p, q) => p - q).join()),
        ),
      );
      for (let i = 0; i < wish.gores; i++) {
        const next = (i + 1) % wish.gores;
        expect(pairs.has([i, next].toSorted((p, q) => p - q).join()), `${i} to ${next}`).toBe(true);
      }
      expect(seams.slice(0, -1).every(({ a, b }) => a.length === 1 && b.length === 1)).toBe(true);
      expect(seams.at(-1)!.a).toHaveLength(2);
      const first = seams.slice(0, Math.floor(Math.ceil(wish.gores / 2) / 2));
      expect(first.every(({ name }) => name.startsWith('Gores in pairs'))).toBe(true);
    }
  });

  test('has a seam where it was wished, at the centre front, and behind what follows from the number', () => {
    for (const wish of CROWNS) {
      const crown = goredCrown(wish);
      const front = goreStrips(wish, crown.copies, 0).filter(
        ({ strip }) => Math.abs(strip.left[0]!.x) < 1e-9 && strip.left[0]!.y > 0,
      );
      expect(front).toHaveLength(wish.frontSeam === 'seam' ? 1 : 0);
      // Opposite a seam stands a seam when the gores are even in number, else the middle of a gore.
      const behind = wish.gores % 2 === 0 ? wish.frontSeam : wish.frontSeam === 'seam' ? 'panel' : 'seam';
      expect(goreAtBack(wish.gores, wish.frontSeam)).toBe(behind === 'panel');
    }
  });

  test('has a lower edge as long as its girth, from the centre back round to it again', () => {
    for (const wish of CROWNS) {
      const { pieces, lower } = goredCrown(wish);
      const side = walker(pieces)(lower);
      expect(Math.abs(side.length - GIRTH)).toBeLessThan(1e-6);
      const half = GIRTH / wish.gores / 2;
      expect(
        Math.abs(side.joints[1]! - (goreAtBack(wish.gores, wish.frontSeam) ? half : 2 * half)),
      ).toBeLessThan(1e-6);
      const places = [...side.joints, ...side.stops.map(({ at }) => at)];
      expect(places.some((at) => Math.abs(at - GIRTH / 2) < 1e-6)).toBe(true);
    }
  });

  test('stands in space with neighbours that share their seam, all the way to one point', () => {
    for (const wish of CROWNS) {
      const { copies } = goredCrown(wish);
      const strips = goreStrips(wish, copies, 30).map(({ strip }) => strip);
      for (const [i, { right }] of strips.entries()) {
        const { left } = strips[(i + 1) % strips.length]!;
        expect(right.every((p, k) => distance3(p, left[k]!) < 1e-9)).toBe(true);
        expect(Math.abs(right.at(-1)!.x) + Math.abs(right.at(-1)!.y)).toBeLessThan(1e-9);
        expect(right[0]!.z).toBe(30);
      }
    }
  });

  test('has a lower edge in space of the same girth, that a band can follow', () => {
    for (const wish of CROWNS) {
      const edge = goreLowerEdge(wish);
      const round = edge.slice(1).reduce((sum, p, i) => sum + distance3(edge[i]!, p), 0);
      expect(Math.abs(round - GIRTH)).toBeLessThan(1e-6);
      expect(Math.abs(edge[0]!.x)).toBeLessThan(1e-9);
      expect(edge[0]!.y).toBeLessThan(0);
      // No part of it is nearer to the axis than the circle that a visor stands on.
      for (const [i, p] of edge.slice(1).entries())
        expect(Math.hypot(p.x + edge[i]!.x, p.y + edge[i]!.y) / 2).toBeGreaterThan(
          goreFront(wish.reach) - 1e-9,
        );
    }
  });

  test('can be made of several kinds of gore, each a piece with as many copies as there are of it', () => {
    const { pieces, copies, seams } = goredCrown({
      ...wishOf(6, 'seam'),
      kindOf: (gore) =>
        gore === 2 || gore === 3
          ? { id: 'front', name: 'Front gore', cloths: ['outer', 'interlining'] }
          : { id: 'gore', name: 'Gore', cloths: ['outer'] },
    });
    expect(
      pieces.map(({ id, cuts }) => [id, ...cuts.map(({ cloth, count }) => `${count} ${cloth}`)]),
    ).toEqual([
      ['gore', '4 outer'],
      ['front', '2 outer', '2 interlining'],
    ]);
    expect(copies.map(({ piece, copy }) => `${piece}${copy}`)).toEqual([
      'gore0',
      'gore1',
      'front0',
      'front1',
      'gore2',
      'gore3',
    ]);
    const walk = walker(pieces);
    for (const { a, b } of seams) expect(Math.abs(walk(a).length - walk(b).length)).toBeLessThan(1e-9);
    const long = pathLength(pieces[0]!.outline[1]!.path);
    expect(Math.abs(walk(seams.at(-1)!.a).length - 2 * long)).toBeLessThan(1e-9);
  });
});
