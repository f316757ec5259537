import { describe, expect, test } from 'vitest';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { scrubOpening, scrubShape } from '../../src/caps/scrub/crown.ts';
import { type ScrubValues, scrubParameters } from '../../src/caps/scrub/parameters.ts';
import { scrub } from '../../src/caps/scrub/scrub.ts';
import { areaOf } from '../../src/geometry/area.ts';
import { developability } from '../../src/geometry/developability.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { checkSeams } from '../../src/pattern/seam-check.ts';
import { inches } from '../../src/units.ts';
import { say } from '../../src/words.ts';
import { describeFamily, HEADS, outlineOf } from './family.ts';
import { timesSewn } from './times-sewn.ts';

const defaults = defaultsOf(scrubParameters);
const HEAD = HEADS[4]!;
const draft = (values: Partial<ScrubValues> = {}) => scrub.draft({ ...defaults, ...values }, HEAD);
const pieceOf = (id: string, values: Partial<ScrubValues> = {}) =>
  draft(values).pattern.pieces.find((p) => p.id === id)!;

// Refused only: the lowest crowns on large heads, the widest strip and the longest elastic on small ones, …
describeFamily(scrub, { mostRefused: 44, also: [{}, { backTie: 'ties' }] });

describe('a scrub cap', () => {
  test('has the pieces of the trade, with ties where they are wished', () => {
    const names = (values: Partial<ScrubValues>) => draft(values).pattern.pieces.map((p) => p.name);
    expect(names({})).toEqual(['Centre strip', 'Side', 'Casing']);
    expect(names({ backTie: 'ties' })).toEqual(['Centre strip', 'Side', 'Casing', 'Tie']);
  });

  test('sews every edge once but those that are turned in', () => {
    for (const backTie of ['elastic', 'ties'] as const) {
      const { pattern } = draft({ backTie });
      for (const { piece, copy, edge, times } of timesSewn(pattern)) {
        const turnedIn =
          (piece === 'casing' && (edge === 'top' || (backTie === 'ties' && edge !== 'bottom'))) ||
          (piece === 'tie' && (edge === 'left' || edge === 'right'));
        expect(times, `${piece} ${copy} ${edge}`).toBeCloseTo(turnedIn ? 0 : 1, 6);
      }
    }
  });

  test('has a strip that is a rectangle as wide as wished and as long as the curved edge of a side', () => {
    const strip = pieceOf('top');
    const [long, side] = [
      pathLength(strip.outline.find((e) => e.name === 'right')!.path),
      pathLength(pieceOf('side').outline.find((e) => e.name === 'seam')!.path),
    ];
    expect(areaOf(outlineOf(strip))).toBeCloseTo(long * defaults.stripWidth, 6);
    expect(Math.abs(long - side)).toBeLessThan(0.02);
  });

  test('has half-oval sides that roll flat', () => {
    for (const { values } of [{ values: {} }, ...scrub.starts]) {
      const all = { ...defaults, ...values };
      const { meanTwist, areaRatio } = developability(scrubShape(all, scrubOpening(all, HEAD)).sideStrip);
      expect(meanTwist).toBeLessThan(Math.PI / 180);
      expect(Math.abs(areaRatio - 1)).toBeLessThan(1e-4);
    }
  });

  // Common practice: a centre strip four to five inches wide, six inches of elastic at the back, up to 10 mm of ease.
  test('comes with the strip, the elastic and the ease of the trade', () => {
    expect(defaults.stripWidth).toBeGreaterThanOrEqual(inches(4));
    expect(defaults.stripWidth).toBeLessThanOrEqual(inches(5));
    expect(defaults.elasticLength).toBe(inches(6));
    expect(defaults.ease).toBeLessThanOrEqual(10);
  });

  test('is drawn in to less than the head by its elastic at rest, and lets the head in when it is stretched', () => {
    for (const head of HEADS) {
      const girth = head.girth + defaults.ease;
      const rests = scrub.draft(defaults, head).facts.find(({ id }) => id === 'rests')!;
      const [figure] = rests.figure;
      if (typeof figure !== 'object' || !('mm' in figure)) throw new Error('a girth');
      expect(figure.mm).toBeLessThan(head.girth);
      // Woven elastic stretches to about twice its length (common practice).
      expect(girth - figure.mm).toBeLessThan(defaults.elasticLength);
    }
  });

  test('asks for as much elastic as is drawn through its casing', () => {
    for (const elasticLength of [150, 180]) {
      const notions = (pieceOf('casing', { elasticLength }).notions ?? []).filter(
        ({ name }) => name === 'Elastic',
      );
      expect(notions.map(({ size }) => say(size ?? [], 'cm'))).toEqual([
        expect.stringMatching(`^${elasticLength / 10}\\.0 cm\\b`),
      ]);
    }
    expect(pieceOf('casing', { backTie: 'ties' }).notions ?? []).toEqual([]);
  });

  test('warns of ties on a child’s cap, and has none unless they are wished', () => {
    expect(defaults.backTie).toBe('elastic');
    expect(pieceOf('tie', { backTie: 'ties' }).notes.flat().join(' ')).toMatch(/child/);
  });

  test('goes further round where its cloth is thick, and every seam still meets', () => {
    const turn = { shell: 14, inner: 2, lining: 6, outer: 1.2 };
    for (const also of [{}, { backTie: 'ties' }] as const) {
      const values = { ...defaults, ...also };
      const { pattern, finishedGirth } = scrub.draft(values, { ...HEAD, turn });
      expect(finishedGirth).toBe(HEAD.girth + defaults.ease);
      const reports = checkSeams(pattern);
      for (const { seam, meets } of reports) expect(meets, seam.name).toBe(true);
      const lower = reports.find(({ seam }) => seam.id === 'lowerEdge')!;
      expect(Math.abs(lower.a - finishedGirth - turn.shell)).toBeLessThan(0.1);
      expect(Math.abs(lower.b - finishedGirth - turn.inner)).toBeLessThan(0.1);
    }
  });
});
