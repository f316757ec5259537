import { describe, expect, test } from 'vitest';
import { flatTop } from '../../../../src/caps/flat-top/flat-top.ts';
import { flatTopParameters } from '../../../../src/caps/flat-top/parameters.ts';
import { defaultsOf } from '../../../../src/caps/parameter.ts';
import { pleatPlaces, pleatsFor } from '../../../../src/caps/parts/side-band/pleats.ts';
import { sideBand } from '../../../../src/caps/parts/side-band/side-band.ts';
import { sideSlope } from '../../../../src/caps/parts/side-band/side-slope.ts';
import { pathLength, pointAt } from '../../../../src/geometry/measure.ts';
import { ovalOfGirth } from '../../../../src/geometry/oval.ts';
import { distance } from '../../../../src/geometry/point.ts';
import type { Piece, PieceMark } from '../../../../src/pattern/piece.ts';
import { HEADS } from '../../family.ts';

const defaults = defaultsOf(flatTopParameters);
const HEAD = HEADS[3]!;
const draft = (values: Partial<typeof defaults>) =>
  flatTop.draft({ ...defaults, crownFullness: 160, gatherAs: 'pleats', ...values }, HEAD);
const bottomOf = (piece: Piece) => piece.outline.find((e) => e.name === 'bottom')!.path;
const pleatsOn = (piece: Piece) =>
  piece.marks.filter((m): m is Extract<PieceMark, { kind: 'pleat' }> => m.kind === 'pleat');

describe('pleats', () => {
  test('take up exactly what the edge is longer than the band', () => {
    for (const [gather, count] of [
      [0.1, 1],
      [0.35, 3],
      [0.8, 8],
    ] as const) {
      const pleats = pleatsFor(572.7 * (1 + gather), gather, count);
      expect(4 * pleats.count * pleats.take).toBeCloseTo(572.7 * gather, 9);
    }
  });

  test('folded, leave as much band between any two as there is between the others', () => {
    const [length, pleats] = [200, { count: 5, take: 12 }];
    const sewn = pleatPlaces(length, pleats).map(([from], k) => from - k * pleats.take);
    const band = length - pleats.count * pleats.take;
    expect(sewn[0]).toBeCloseTo(band / 10, 9);
    for (const [k, at] of sewn.slice(1).entries()) expect(at - sewn[k]!).toBeCloseTo(band / 5, 9);
  });

  test('stand on the stitch line of front and back, as many as wished, and their takes bring it to the band’s length', () => {
    for (const sideBandPieces of ['2', '4'] as const) {
      for (const crownTilt of [0, 30]) {
        const cap = draft({ crownGather: 0.3, pleats: 3, sideBandPieces, crownTilt });
        for (const id of ['sideBandFront', 'sideBandBack']) {
          const piece = cap.pattern.pieces.find((p) => p.id === id)!;
          const [bottom, pleats] = [bottomOf(piece), pleatsOn(piece)];
          const quarters = sideBandPieces === '2' ? 2 : 1;
          expect(pleats).toHaveLength(3 * quarters);
          // Along the edge, not across: the take is the way between the feet of the two lines.
          const take = (cap.finishedGirth * 0.3) / 12;
          for (const { fold, place } of pleats) {
            const [a, b] = [fold.from, place.from].map((p) => alongOf(bottom, p));
            expect(Math.abs(Math.abs(a! - b!) - take)).toBeLessThan(0.02);
          }
          expect(pathLength(bottom) - pleats.length * take).toBeCloseTo(
            (cap.finishedGirth / 4) * quarters,
            1,
          );
        }
      }
    }
  });

  test('fold towards the back on both sides of the cap', () => {
    const cap = draft({ crownGather: 0.3, pleats: 2, sideBandPieces: '4' });
    for (const [id, way] of [
      ['sideBandFront', 1],
      ['sideBandBack', -1],
    ] as const) {
      const piece = cap.pattern.pieces.find((p) => p.id === id)!;
      // The centre stands at the left of either quarter: from the centre front to the side is backwards, to the centre back is too.
      for (const { fold, place } of pleatsOn(piece)) expect(Math.sign(place.from.x - fold.from.x)).toBe(way);
      expect(piece.cuts).toEqual([{ cloth: 'outer', count: 2, mirrored: 1 }]);
    }
  });

  test('are mirror images of one another on a half that is cut on the fold', () => {
    const cap = draft({ crownGather: 0.4, pleats: 3, sideBandPieces: '2' });
    const pleats = pleatsOn(cap.pattern.pieces.find((p) => p.id === 'sideBandBack')!);
    for (const { fold, place } of pleats) {
      const mirror = pleats.find(
        (other) => distance(other.fold.from, { x: -fold.from.x, y: fold.from.y }) < 1e-6,
      );
      expect(mirror && distance(mirror.place.to, { x: -place.to.x, y: place.to.y })).toBeLessThan(1e-6);
    }
  });

  test('go all the way round a side band in one piece, and fold towards its ends at the back', () => {
    const slope = sideSlope(ovalOfGirth(700, 1), 560 * 1.3, 70);
    const { pieces } = sideBand({
      id: 'side',
      name: 'Side',
      cloth: 'outer',
      slope,
      pieces: '1',
      gather: 0.3,
      pleats: 3,
    });
    const pleats = pleatsOn(pieces[0]!);
    expect(pleats).toHaveLength(12);
    for (const { fold, place } of pleats)
      expect(Math.sign(place.from.x - fold.from.x)).toBe(Math.sign(fold.from.x));
  });

  test('that could not be folded are refused: fewer are offered, or more cloth', () => {
    const values = { ...defaults, gatherAs: 'pleats', pleats: 8, crownGather: 0.1 } as const;
    const [fewer] = flatTop.problems(values, HEAD);
    expect(fewer).toMatchObject({ field: 'cap.pleats', nearest: 2 });
    const [more] = flatTop.problems({ ...values, crownGather: 0.01 }, HEAD);
    expect(more!.field).toBe('cap.crownGather');
    expect(flatTop.problems({ ...values, pleats: 1, crownGather: more!.nearest! }, HEAD)).toEqual([]);
  });
});

/** Where on a path a point of it lies, mm along. */
const alongOf = (path: Parameters<typeof pathLength>[0], p: { x: number; y: number }): number => {
  const length = pathLength(path);
  const steps = Array.from({ length: 2001 }, (_, i) => (i * length) / 2000);
  const near = steps.reduce((best, at) =>
    distance(pointAt(path, at), p) < distance(pointAt(path, best), p) ? at : best,
  );
  const fine = Array.from({ length: 401 }, (_, i) => near + ((i - 200) / 200) * (length / 2000));
  return fine.reduce((best, at) =>
    distance(pointAt(path, at), p) < distance(pointAt(path, best), p) ? at : best,
  );
};
