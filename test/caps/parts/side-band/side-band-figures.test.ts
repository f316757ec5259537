import { expect, test } from 'vitest';
import { sideBand } from '../../../../src/caps/parts/side-band/side-band.ts';
import { sideSlope } from '../../../../src/caps/parts/side-band/side-slope.ts';
import { ovalOfGirth } from '../../../../src/geometry/oval.ts';
import { radius } from '../../../../src/geometry/path.ts';
import type { Piece } from '../../../../src/pattern/piece.ts';
import { expectNear } from '../../../geometry/near.ts';

/** What a figure's arithmetic comes to, mm. */
const resultOf = ({ figures }: Piece, name: string): number => {
  const last = figures.find((figure) => figure.name === name)?.worked.at(-1);
  if (typeof last !== 'object' || !('mm' in last)) throw new Error(`no length in ${name}`);
  return last.mm;
};

test.each([
  ['flares out', 560, 660],
  ['narrows upwards', 566, 528],
])('the arithmetic of a side that %s gives the radii that its edges are drawn with', (_, opening, rim) => {
  for (const pieces of ['1', '2', '4'] as const) {
    const { pieces: all } = sideBand({
      id: 'side',
      name: 'Side',
      cloth: 'outer',
      slope: sideSlope(ovalOfGirth(rim, 1), opening, 80),
      pieces,
      gather: 0,
      pleats: 0,
    });
    for (const piece of all) {
      for (const edge of ['bottom', 'top'] as const) {
        const [curve] = piece.outline.find(({ name }) => name === edge)!.path;
        expect(curve?.kind).toBe('arc');
        if (curve?.kind === 'arc')
          expectNear(resultOf(piece, `Radius of the ${edge} edge`), radius(curve), 1e-6);
      }
    }
  }
});
