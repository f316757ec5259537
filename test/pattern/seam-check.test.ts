import { describe, expect, test } from 'vitest';
import { circle, line } from '../../src/geometry/path.ts';
import { point } from '../../src/geometry/point.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import type { Notch, Piece } from '../../src/pattern/piece.ts';
import { checkSeams } from '../../src/pattern/seam-check.ts';
import { even } from './sample-pieces.ts';

const piece = (
  id: string,
  edge: string,
  path: Piece['outline'][number]['path'],
  notches: readonly Notch[],
): Piece => ({
  id,
  name: id,
  cuts: [{ cloth: 'outer', count: 1 }],
  outline: [{ name: edge, path, kind: 'crown' }],
  foldable: false,
  grain: [point(0, 0), point(0, 1)],
  notches,
  centreLines: [],
  marks: [],
  labelAt: point(0, 0),
  dimensions: [],
  figures: [],
  notes: [],
});
const notch = (edge: string, at: number, count: 1 | 2 = 1): Notch => ({ edge, at, count, name: `at ${at}` });

/** A disc of radius 100 sewn to a straight strip of a given length. */
const sewn = (length: number, rim: readonly Notch[], strip: readonly Notch[], ease = 0): Pattern => ({
  pieces: [
    piece('disc', 'rim', circle(point(0, 0), 100), rim),
    piece('strip', 'long', [line(point(0, 0), point(length, 0))], strip),
  ],
  seams: [
    {
      id: 'round',
      name: 'round',
      kind: 'crown',
      a: [{ piece: 'disc', copy: 0, edge: 'rim' }],
      b: [{ piece: 'strip', copy: 0, edge: 'long' }],
      ease,
      ring: true,
    },
  ],
  allowances: even(6),
});
const check = (...wish: Parameters<typeof sewn>) => checkSeams(sewn(...wish))[0]!;
const round = 200 * Math.PI;

describe('the seam check', () => {
  test('measures both sides on the pieces themselves', () => {
    const report = check(round, [], []);
    expect(report.a).toBeCloseTo(round, 9);
    expect(report.b).toBeCloseTo(round, 9);
    expect(report.meets).toBe(true);
  });

  test('finds a strip that is a tenth of a millimetre short', () => {
    const report = check(round - 0.1, [], []);
    expect(report.difference).toBeCloseTo(-0.1, 9);
    expect(report.meets).toBe(false);
  });

  test('allows the ease that a gathered seam states, and no other', () => {
    expect(check(round * 1.5, [], [], 0.5).meets).toBe(true);
    expect(check(round * 1.4, [], [], 0.5).meets).toBe(false);
  });

  test('pairs notches at the same place and with the same count', () => {
    expect(check(round, [notch('rim', 50)], [notch('long', 50)]).notches).toEqual({
      matched: 1,
      unmatched: [],
    });
    const shifted = check(round, [notch('rim', 50)], [notch('long', 51)]);
    expect(shifted.notches.unmatched).toHaveLength(2);
    expect(shifted.meets).toBe(false);
    expect(check(round, [notch('rim', 50, 2)], [notch('long', 50)]).meets).toBe(false);
  });

  test('takes the end of a ring for its start, and a joint of pieces for a notch', () => {
    expect(check(round, [notch('rim', 0, 2)], [notch('long', round, 2)]).meets).toBe(true);
    expect(check(round, [notch('rim', 0, 2)], []).notches).toEqual({ matched: 1, unmatched: [] });
  });

  test('refuses to sew an edge that does not exist', () => {
    const pattern = sewn(round, [], []);
    const [seam] = pattern.seams;
    const broken = { ...pattern, seams: [{ ...seam!, b: [{ piece: 'strip', copy: 0, edge: 'short' }] }] };
    expect(() => checkSeams(broken)).toThrow(/strip.short/);
  });
});
