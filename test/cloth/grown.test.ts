import { describe, expect, test } from 'vitest';
import { flatTop } from '../../src/caps/flat-top/flat-top.ts';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { cutPattern, grown } from '../../src/cloth/grown.ts';
import { growthOf } from '../../src/cloth/shrinkage.ts';
import { defaultSpec } from '../../src/design/default-spec.ts';
import { areaOf } from '../../src/geometry/area.ts';
import { pathLength, pointAt } from '../../src/geometry/measure.ts';
import { distance, subtract } from '../../src/geometry/point.ts';
import { cutLine } from '../../src/pattern/cut-line.ts';
import { checkSeams } from '../../src/pattern/seam-check.ts';
import { say } from '../../src/words.ts';

const values = defaultsOf(flatTop.parameters) as Parameters<typeof flatTop.draft>[0];
const { pattern } = flatTop.draft(values, { girth: 560, ratio: 0.8, arc: 315 });
const shrinks = { washed: false, shrinkLength: 0.05, shrinkWidth: 0.02 };
const growth = growthOf(shrinks);
/** What washing does to a piece that was cut larger. */
const washed = { along: 1 - shrinks.shrinkLength, across: 1 - shrinks.shrinkWidth };

describe('pieces cut larger for cloth that shrinks', () => {
  test('come out of the wash as they were drafted, notches and all', () => {
    for (const piece of pattern.pieces) {
      const after = grown(grown(piece, growth), washed);
      for (const [i, edge] of piece.outline.entries()) {
        const back = after.outline[i]!.path;
        expect(Math.abs(pathLength(back) - pathLength(edge.path)), `${piece.id} ${edge.name}`).toBeLessThan(
          0.01,
        );
        for (const part of [0, 0.2, 0.5, 0.9]) {
          const length = pathLength(edge.path) * part;
          expect(distance(pointAt(back, length), pointAt(edge.path, length))).toBeLessThan(0.02);
        }
      }
      for (const [i, notch] of piece.notches.entries()) {
        expect(Math.abs(after.notches[i]!.at - notch.at)).toBeLessThan(0.02);
      }
    }
  });

  test('so every seam still meets after the wash', () => {
    const cut = pattern.pieces.map((piece) => grown(piece, growth));
    const after = cut.map((piece) => grown(piece, washed));
    expect(checkSeams({ ...pattern, pieces: after }).every(({ meets }) => meets)).toBe(true);
    // Before it they need not: the tip grows along one way, its side band along another.
    expect(checkSeams({ ...pattern, pieces: cut }).every(({ meets }) => meets)).toBe(false);
  });

  test('are larger in area by both shrinkages together', () => {
    for (const piece of pattern.pieces) {
      const area = (p: typeof piece) => areaOf(p.outline.flatMap(({ path }) => path));
      expect(area(grown(piece, growth)) / area(piece)).toBeCloseTo(1 / (0.95 * 0.98), 5);
    }
  });

  test('are longer along the grain that is drawn on them: a band 572.7 mm long lies along the selvedge', () => {
    const band = pattern.pieces.find(({ id }) => id === 'band')!;
    const length = (p: typeof band) => pathLength(p.outline.find(({ name }) => name === 'bottom')!.path);
    expect(length(grown(band, growth))).toBeCloseTo(length(band) / 0.95, 6);
  });

  test('keep their nap: what pointed up points up when it is cut', () => {
    for (const piece of pattern.pieces) {
      const [before, after] = [piece, grown(piece, growth)].map(({ grain: [foot, head] }) =>
        subtract(head, foot),
      );
      // Along the grain itself, longer by what the wash takes along.
      expect(after!.x, piece.id).toBeCloseTo(before!.x / 0.95, 6);
      expect(after!.y, piece.id).toBeCloseTo(before!.y / 0.95, 6);
    }
  });

  test('say what the first wash takes along the grain and across it', () => {
    const { cloths } = defaultSpec;
    const cut = cutPattern(pattern, { ...cloths, outer: { ...cloths.outer, ...shrinks } });
    const said = cut.pieces
      .filter(({ cuts }) => cuts.some(({ cloth }) => cloth === 'outer'))
      .map(({ notes }) => notes.map((note) => say(note, 'cm')).filter((note) => note.includes('wash')));
    expect(said.length).toBeGreaterThan(3);
    for (const notes of said)
      expect(notes).toEqual([
        'Larger by what the first wash or steaming takes: 5 % along the grain, 2 % across.',
      ]);
  });

  test('are one for each cloth where two shrink differently, and the same pattern where none does', () => {
    const { cloths } = defaultSpec;
    expect(cutPattern(pattern, cloths)).toBe(pattern);
    const cut = cutPattern(pattern, { ...cloths, outer: { ...cloths.outer, ...shrinks } });
    const bands = cut.pieces.filter(({ id }) => id.startsWith('band'));
    expect(bands.map(({ cuts }) => cuts.map(({ cloth }) => cloth))).toEqual([['outer'], ['interlining']]);
    const sewn = pattern.pieces.find(({ id }) => id === 'band')!;
    expect(bands[1]!.outline.map(({ path }) => path)).toEqual(sewn.outline.map(({ path }) => path));
    // By itself it says and shows what is true of it: it ends at the stitch line.
    expect(cutLine(bands[1]!, cut.allowances)).toEqual(sewn.outline.map(({ path }) => path));
    expect(cutLine(bands[0]!, cut.allowances)).not.toEqual(bands[0]!.outline.map(({ path }) => path));
    const counts = (pieces: typeof cut.pieces) =>
      pieces.flatMap(({ cuts }) => cuts).reduce((sum, { count }) => sum + count, 0);
    expect(counts(cut.pieces)).toBe(counts(pattern.pieces));
  });
});
