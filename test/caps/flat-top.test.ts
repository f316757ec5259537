import { describe, expect, test } from 'vitest';
import { flatTop } from '../../src/caps/flat-top/flat-top.ts';
import { flatTopParameters } from '../../src/caps/flat-top/parameters.ts';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { describeFamily, HEADS, outlineOf } from './family.ts';

const defaults = defaultsOf(flatTopParameters);
const HEAD = HEADS[3]!;

// Refused only: a visor longer than half of every head, a strap wider than the least band, …
describeFamily(flatTop, {
  mostRefused: 80,
  also: [
    { visorSource: 'drafted' },
    { visorSource: 'insert' },
    { tipRatio: 0.8, sideBandPieces: '2' },
    {
      tipRatio: 0.9,
      sideBandPieces: '2',
      crownTilt: 30,
      crownGather: 0.3,
      gatherAs: 'pleats',
      visorSource: 'insert',
    },
  ],
});

describe('a flat-top cap', () => {
  test('has the pieces of the trade', () => {
    const { pieces } = flatTop.draft(defaults, HEAD).pattern;
    expect(pieces.map((p) => p.name)).toEqual([
      'Tip',
      'Side band',
      'Visor',
      'Visor stiffener',
      'Band',
      'Strap',
      'Lining tip',
      'Lining side band',
      'Lining band',
    ]);
    expect(pieces.find((p) => p.id === 'visor')!.cuts).toEqual([
      { cloth: 'outer', count: 2 },
      { cloth: 'interlining', count: 1 },
    ]);
  });

  test('sews every edge of every copy exactly once, and the band twice where it holds the visor', () => {
    const { pieces, seams } = flatTop.draft(defaults, HEAD).pattern;
    const used = new Map<string, number>();
    for (const { piece, copy, edge, from, to } of seams.flatMap((s) => [...s.a, ...s.b])) {
      const path = pieces.find((p) => p.id === piece)!.outline.find((e) => e.name === edge)!.path;
      const key = `${piece} ${copy} ${edge}`;
      used.set(key, (used.get(key) ?? 0) + ((to ?? pathLength(path)) - (from ?? 0)) / pathLength(path));
    }
    for (const piece of pieces) {
      if (piece.id === 'stiffener') continue;
      for (let copy = 0; copy < piece.cuts[0]!.count; copy++) {
        for (const edge of piece.outline) {
          // The visor is caught in the lower edge's seam: its two covers share one seam line, sewn as one.
          if (piece.id === 'visor' && copy === 1 && edge.name === 'inner') continue;
          const times = used.get(`${piece.id} ${copy} ${edge.name}`) ?? 0;
          const caught = piece.id === 'band' && edge.name === 'bottom' ? 190 / (HEAD.girth + 12.7) : 0;
          expect(times, `${piece.id} ${copy} ${edge.name}`).toBeCloseTo(1 + caught, 3);
          used.delete(`${piece.id} ${copy} ${edge.name}`);
        }
      }
    }
    // No more copies are sewn than are cut.
    expect([...used.keys()]).toEqual([]);
  });

  test('has a tip whose edge is as long round as the crown girth', () => {
    for (const tipRatio of [1, 0.85, 0.72]) {
      const { pieces } = flatTop.draft({ ...defaults, tipRatio }, HEAD).pattern;
      const girth = pathLength(outlineOf(pieces.find((p) => p.id === 'tip')!));
      expect(Math.abs(girth - (HEAD.girth + defaults.ease + defaults.crownFullness))).toBeLessThan(0.05);
    }
  });

  test('comes in front and back quarters where it is higher in front, each of them a mirrored pair', () => {
    const { pieces } = flatTop.draft({ ...defaults, crownTilt: 30 }, HEAD).pattern;
    for (const id of ['sideBandFront', 'sideBandBack', 'liningSideFront', 'liningSideBack'])
      expect(pieces.find((p) => p.id === id)!.cuts[0]).toMatchObject({ count: 2, mirrored: 1 });
  });

  test('stands higher in front by the length that is asked for, and by nothing where it is level', () => {
    for (const crownTilt of [0, 12, 60]) {
      const { strips } = flatTop.form({ ...defaults, crownTilt }, HEAD);
      const { left } = strips.find(({ piece }) => piece === 'tip')!.strip;
      expect(left.at(-1)!.z - left[0]!.z).toBeCloseTo(crownTilt, 9);
    }
  });

  test('cannot be tilted until its back has no height; the nearest tilt leaves room for the seams', () => {
    const values = { ...defaults, sideBandHeight: 40, crownTilt: 90 };
    const [found] = flatTop.problems(values, HEAD);
    expect(found!.field).toBe('cap.crownTilt');
    const { strips } = flatTop.form({ ...values, crownTilt: found!.nearest! }, HEAD);
    const back = strips.find(({ piece }) => piece === 'tip')!.strip.left[0]!;
    expect(back.z - values.bandHeight).toBeGreaterThanOrEqual(12);
    expect(flatTop.problems({ ...values, crownTilt: found!.nearest! }, HEAD)).toEqual([]);
    expect(flatTop.problems({ ...values, crownTilt: found!.nearest! + 4 }, HEAD)).not.toEqual([]);
  });

  test('cannot be gathered so much that its side band would lie flat inside out', () => {
    const values = { ...defaults, sideBandHeight: 30, crownFullness: 0, crownGather: 0.8 };
    const [found] = flatTop.problems(values, HEAD);
    expect(found!.field).toBe('cap.crownGather');
    expect(flatTop.problems({ ...values, crownGather: found!.nearest! }, HEAD)).toEqual([]);
  });

  test('gathers the shell alone: the lining is sewn to the band as it is', () => {
    const { seams } = flatTop.draft({ ...defaults, crownGather: 0.4 }, HEAD).pattern;
    const ease = (id: string) => seams.find((seam) => seam.id === id)!.ease;
    expect(ease('bandToSide')).toBeCloseTo(0.4, 12);
    expect(ease('liningBandToSide')).toBe(0);
  });
});
