import { describe, expect, test } from 'vitest';
import { defaultsOf } from '../../../src/caps/parameter.ts';
import { type VisorValues, visorParameters } from '../../../src/caps/parts/visor/parameters.ts';
import { visorParts } from '../../../src/caps/parts/visor/visor-parts.ts';
import { visorEdgeSeam } from '../../../src/caps/parts/visor/visor-seams.ts';
import { visorTurn } from '../../../src/caps/parts/visor/visor-turn.ts';
import type { Head } from '../../../src/caps/style.ts';
import { pathLength, pointAt } from '../../../src/geometry/measure.ts';
import { distance, type Point } from '../../../src/geometry/point.ts';
import { checkSeams } from '../../../src/pattern/seam-check.ts';
import { expectNear } from '../../geometry/near.ts';

const headIn = (outer: number): Head => ({
  girth: 574,
  ratio: 0.8,
  arc: 320,
  turn: { shell: Math.PI * outer, inner: Math.PI * outer, lining: Math.PI * outer, outer },
});
const defaults = defaultsOf(visorParameters);
const WISHES: readonly Partial<VisorValues>[] = [
  { visorSource: 'drafted' },
  { visorSource: 'drafted', visorFullness: 0, visorTipRounding: 3 },
  { visorSource: 'drafted', visorFullness: 1, visorDepth: 75, visorDrop: 0.9 },
  { visorSource: 'insert' },
  { visorSource: 'insert', insertWidths: [60, 58, 50, 36, 18] },
];
const visorOf = (wish: Partial<VisorValues>, outer: number) =>
  visorParts({ ...defaults, ...wish }, headIn(outer));
const edgeOf = (parts: ReturnType<typeof visorOf>, id: string) =>
  parts.pieces.find((piece) => piece.id === id)!.outline.find(({ name }) => name === 'outer')!.path;
const nearest = (p: Point, to: readonly Point[]): number => Math.min(...to.map((q) => distance(p, q)));

describe('the two covers of a visor in thick cloth', () => {
  test.each(WISHES)(
    'are apart by the turn in front, by nothing at the tips, and nowhere by more: %o',
    (wish) => {
      const parts = visorOf(wish, 1.5);
      const turn = visorTurn(headIn(1.5));
      const [upper, under] = [edgeOf(parts, 'visor'), edgeOf(parts, 'visorUnder')];
      const dense = Array.from({ length: 801 }, (_, i) => pointAt(under, (i * pathLength(under)) / 800));
      const long = pathLength(upper);
      expectNear(pointAt(under, pathLength(under) / 2).y - pointAt(upper, long / 2).y, turn, 0.02);
      for (const at of [0, long]) expect(nearest(pointAt(upper, at), dense)).toBeLessThan(0.02);
      for (let i = 0; i <= 60; i++) {
        expect(nearest(pointAt(upper, (i * long) / 60), dense)).toBeLessThan(turn + 0.03);
      }
      expect(long).toBeGreaterThan(pathLength(under));
    },
  );

  test.each(WISHES)('are sewn to each other with the ease that is measured on them: %o', (wish) => {
    for (const outer of [0, 0.3, 1.5, 3]) {
      const parts = visorOf(wish, outer);
      const seam = visorEdgeSeam(parts);
      const [report] = checkSeams({ pieces: parts.pieces, seams: [seam], allowances: ALLOWANCES });
      expectNear(report!.ease, seam.ease, 1e-9);
      expect(report!.meets).toBe(true);
      if (outer === 0) expect(seam.ease).toBe(0);
      else expect(seam.ease).toBeLessThan(0);
    }
  });

  test('leave the stiffener as it was: it fills the cover below', () => {
    const [thin, thick] = [visorOf(WISHES[0]!, 0), visorOf(WISHES[0]!, 1.5)];
    const stiffener = (parts: typeof thin) => pathLength(edgeOf(parts, 'stiffener'));
    expectNear(stiffener(thick), stiffener(thin), 1e-9);
  });
});

const ALLOWANCES = {
  crown: 6,
  gore: 6,
  side: 6,
  band: 6,
  lower: 6,
  visorEdge: 6,
  brimEdge: 6,
  strapEdge: 6,
  hem: 6,
  none: 0,
};
