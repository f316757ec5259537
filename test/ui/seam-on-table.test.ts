import { describe, expect, test } from 'vitest';
import { flatTop } from '../../src/caps/flat-top/flat-top.ts';
import { flatTopParameters } from '../../src/caps/flat-top/parameters.ts';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { grown } from '../../src/cloth/grown.ts';
import { arrange } from '../../src/drawing/arrange.ts';
import { drawPiece } from '../../src/drawing/draw-piece.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { checkSeams } from '../../src/pattern/seam-check.ts';
import { seamOnTable } from '../../src/ui/seam-on-table.ts';
import { HEADS } from '../caps/family.ts';

const { pattern } = flatTop.draft(defaultsOf(flatTopParameters), HEADS[3]!);
const placedOf = (pieces: typeof pattern.pieces) =>
  arrange(
    pieces.map((piece) =>
      drawPiece(piece, pattern.allowances, { unit: 'cm', halves: false, dimensions: false, label: null }),
    ),
  );

describe('a seam pointed at', () => {
  test('is as long on the table as in the seam check, on both its sides together', () => {
    const placed = placedOf(pattern.pieces);
    for (const { seam, a, b } of checkSeams(pattern)) {
      const sides = seamOnTable(pattern, pattern, placed, seam.id);
      const length = sides.reduce((sum, { path }) => sum + pathLength(path), 0);
      expect(Math.abs(length - a - b), seam.name).toBeLessThan(1e-6);
    }
  });

  test('lies on the pieces as they are cut, where these are larger than what is sewn', () => {
    // Along the grain a tenth more, across it nothing: the band's grain runs along it.
    const cutting = { ...pattern, pieces: pattern.pieces.map((p) => grown(p, { along: 1.1, across: 1 })) };
    const placed = placedOf(cutting.pieces);
    const onBand = seamOnTable(pattern, cutting, placed, 'visorToBand').filter(
      ({ at }) => at === placed.find(({ drawing }) => drawing.id === 'band')!.at,
    );
    const stretch = checkSeams(pattern).find(({ seam }) => seam.id === 'visorToBand')!.a;
    const length = onBand.reduce((sum, { path }) => sum + pathLength(path), 0);
    expect(Math.abs(length - 1.1 * stretch)).toBeLessThan(1e-6);
  });

  test('is nothing where no seam is pointed at', () => {
    const placed = placedOf(pattern.pieces);
    expect(seamOnTable(pattern, pattern, placed, null)).toEqual([]);
    expect(seamOnTable(pattern, pattern, placed, 'no such seam')).toEqual([]);
  });
});
