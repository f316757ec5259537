import { describe, expect, test } from 'vitest';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { capOpening, crownShape } from '../../src/caps/three-piece/crown.ts';
import { type ThreePieceValues, threePieceParameters } from '../../src/caps/three-piece/parameters.ts';
import { threePiece } from '../../src/caps/three-piece/three-piece.ts';
import { developability } from '../../src/geometry/developability.ts';
import { pathLength, pointAt } from '../../src/geometry/measure.ts';
import { distance } from '../../src/geometry/point.ts';
import { checkSeams } from '../../src/pattern/seam-check.ts';
import { describeFamily, HEADS } from './family.ts';
import { timesSewn } from './times-sewn.ts';

const defaults = defaultsOf(threePieceParameters);
const HEAD = HEADS[4]!;
const draft = (values: Partial<ThreePieceValues> = {}) => threePiece.draft({ ...defaults, ...values }, HEAD);
const pieceOf = (id: string, values: Partial<ThreePieceValues> = {}) =>
  draft(values).pattern.pieces.find((p) => p.id === id)!;
const dimensionOf = (id: string, name: string, values: Partial<ThreePieceValues> = {}) =>
  pathLength(pieceOf(id, values).dimensions.find((d) => d.name === name)!.along);
const shapeOf = (values: Partial<ThreePieceValues>, head = HEAD) => {
  const all = { ...defaults, ...values };
  return crownShape(all, capOpening(all, head));
};

// Refused only: the lowest crowns on large heads, the broadest ends on small ones, visors beyond half the head, …
describeFamily(threePiece, {
  mostRefused: 20,
  also: [{}, { visorSource: 'none', lining: false }],
});

describe('a three-piece flat cap', () => {
  test('has the pieces of the trade, its sides a mirrored pair', () => {
    const { pieces } = draft().pattern;
    expect(pieces.map((p) => p.name)).toEqual([
      'Top',
      'Side',
      'Visor',
      'Visor stiffener',
      'Lining top',
      'Lining side',
      'Sweatband',
    ]);
    expect(pieces.find((p) => p.id === 'side')!.cuts).toEqual([{ cloth: 'outer', count: 2, mirrored: 1 }]);
  });

  test('sews every edge once, and the lower edge to lining and sweatband as well, caught with the visor in front', () => {
    const { pattern } = draft();
    const stretch = defaults.visorLength / (HEAD.girth + defaults.ease);
    const lower = timesSewn(pattern).filter(
      ({ piece, edge }) => ['top', 'side'].includes(piece) && ['back', 'front', 'lower'].includes(edge),
    );
    const all = lower.reduce((sum, { length }) => sum + length, 0);
    const times = lower.reduce((sum, each) => sum + each.times * each.length, 0) / all;
    expect(times).toBeCloseTo(2 + stretch, 4);
    for (const { piece, edge, times: n } of timesSewn(pattern)) {
      if (['right', 'left', 'seam'].includes(edge) && /top|side/i.test(piece))
        expect(n, `${piece} ${edge}`).toBeCloseTo(1, 6);
    }
  });

  test('closes its long seams within a fiftieth of a millimetre without any adjustment', () => {
    for (const values of [{}, { topWidth: 280, overhang: 45 }, { topWidth: 160, crownHeight: 140 }]) {
      for (const { seam, difference } of checkSeams(draft(values).pattern)) {
        if (seam.kind === 'gore') expect(Math.abs(difference), seam.name).toBeLessThan(0.02);
      }
    }
  });

  test('is as wide at its ends and at its widest as was wished', () => {
    const { pattern } = draft({ topWidth: 220, topFrontWidth: 96, topBackWidth: 70 });
    const dimensions = pattern.pieces.find((p) => p.id === 'top')!.dimensions;
    const along = (name: string) => pathLength(dimensions.find((d) => d.name === name)!.along);
    expect(along('Front')).toBeCloseTo(96, 6);
    expect(along('Back')).toBeCloseTo(70, 6);
    expect(Math.abs(along('Widest') - 220)).toBeLessThan(0.1);
  });

  test('has a front edge that is the front of the head’s oval, as the visor is', () => {
    const opening = capOpening(defaults, HEAD);
    const front = pieceOf('top').outline.find((e) => e.name === 'front')!.path;
    const { halfLength: a, halfBreadth: b } = opening.oval;
    const middle = pointAt(front, pathLength(front) / 2);
    for (const share of [0.05, 0.2, 0.4, 0.7, 0.93]) {
      const p = pointAt(front, pathLength(front) * share);
      // Its flat points lie on the same ellipse, seen from below.
      expect(Math.abs((p.x / b) ** 2 + ((middle.y + a - p.y) / a) ** 2 - 1)).toBeLessThan(1e-4);
    }
  });

  test('turns smoothly from top to side round the front of its edge: flat angles there make a straight line', () => {
    const { top, side } = shapeOf({});
    const turnBetween = (p: { x: number; y: number }, q: { x: number; y: number }) =>
      Math.acos((p.x * q.x + p.y * q.y) / Math.hypot(p.x, p.y) / Math.hypot(q.x, q.y));
    const step = 0.5;
    const away = (path: typeof top.front, from: number) => {
      const end = from === 0 ? 0 : pathLength(path);
      const [p, q] = [pointAt(path, end), pointAt(path, from === 0 ? step : end - step)];
      return { x: q.x - p.x, y: q.y - p.y };
    };
    const onTop = turnBetween(away(top.front, 0), away(top.right, 1));
    const onSide = turnBetween(away(side.lower, 1), away(side.seam, 0));
    expect(Math.abs(onTop + onSide - Math.PI)).toBeLessThan(0.02);
  });

  test('has sides that roll flat: less than a degree of twist, no surplus of cloth', () => {
    for (const { values } of [{ values: {} }, ...threePiece.starts]) {
      for (const head of [HEADS[0]!, HEADS[5]!]) {
        const { meanTwist, areaRatio } = developability(shapeOf(values, head).sideStrip);
        expect(meanTwist).toBeLessThan(Math.PI / 180);
        expect(Math.abs(areaRatio - 1)).toBeLessThan(1e-4);
      }
    }
  });

  test('has a top that rolls flat exactly: its flat length is that of its profile in space', () => {
    const { seam, top, length } = shapeOf({});
    // Fine chords of the profile are a little shorter than it, by the square of their turning.
    const chords = seam
      .slice(1)
      .reduce((sum, p, i) => sum + Math.hypot(p.y - seam[i]!.y, p.z - seam[i]!.z), 0);
    expect(length - chords).toBeGreaterThan(0);
    expect(length - chords).toBeLessThan(0.1);
    const [back, front] = [pointAt(top.right, 0), pointAt(top.right, pathLength(top.right))];
    expect(front.y - back.y).toBeCloseTo(length, 9);
  });

  test('has a lining lower and narrower by what was wished, and as long round the edge', () => {
    expect(dimensionOf('top', 'Widest') - dimensionOf('liningTop', 'Widest')).toBeCloseTo(
      defaults.liningTake,
      1,
    );
    expect(dimensionOf('side', 'Depth')).toBeGreaterThan(dimensionOf('liningSide', 'Depth'));
    const [shell, lining] = ['side', 'liningSide'].map((id) =>
      pathLength(pieceOf(id).outline.find((e) => e.name === 'lower')!.path),
    );
    expect(Math.abs(shell! - lining!)).toBeLessThan(0.02);
  });

  test('reaches further over the visor the more it overhangs', () => {
    const fronts = [10, 25, 45].map((overhang) => Math.max(...shapeOf({ overhang }).seam.map((p) => p.y)));
    const edge = capOpening(defaults, HEAD).oval.halfLength;
    expect(fronts.map((y) => Math.round((y - edge) * 1e6) / 1e6)).toEqual([10, 25, 45]);
    expect(distance(capOpening(defaults, HEAD).front, { x: defaults.topFrontWidth / 2, y: 0 })).toBeLessThan(
      edge,
    );
  });

  test('goes further round where its cloth is thick, and every seam still meets', () => {
    const turn = { shell: 14, inner: 2, lining: 6, outer: 1.2 };
    for (const also of [{}, { lining: false }, { visorSource: 'none' }] as const) {
      const values = { ...defaults, ...also };
      const { pattern, finishedGirth } = threePiece.draft(values, { ...HEAD, turn });
      expect(finishedGirth).toBe(HEAD.girth + defaults.ease);
      const reports = checkSeams(pattern);
      for (const { seam, meets } of reports) expect(meets, seam.name).toBe(true);
      const lower = reports.find(({ seam }) => seam.id === 'lowerEdge')!;
      expect(Math.abs(lower.a - finishedGirth - turn.shell)).toBeLessThan(0.1);
      expect(Math.abs(lower.b - finishedGirth - turn.inner)).toBeLessThan(0.1);
    }
  });
});
