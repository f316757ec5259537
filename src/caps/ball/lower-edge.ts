import type { Side } from '../../pattern/chain.ts';
import type { Piece } from '../../pattern/piece.ts';
import type { EdgeUse, Seam } from '../../pattern/seam.ts';
import { exactMm, words } from '../../words.ts';
import type { Fastening } from '../parts/back-strap/fastening.ts';
import { ring } from '../parts/seams/seam.ts';
import { sweatband, sweatbandEdge } from '../parts/sweatband/sweatband.ts';

/**
 * The lower edge of a cap with an opening, once round as its fastening closes it: the strap's outer layer and the crown on one
 * side; on the other its inner layer and the sweatband, which goes from one end of the opening to the other.
 */
export const ballLowerEdge = (
  round: Side,
  crown: readonly EdgeUse[],
  { outer, inner }: Fastening,
  height: number,
): { readonly sweatband: Piece; readonly seam: Seam } => ({
  sweatband: openSweatband(round, height),
  seam: ring(
    'lowerEdge',
    'Crown to sweatband, lower edge, closed by the strap',
    'lower',
    [outer.toRight, ...crown, outer.fromLeft],
    [inner.toRight, sweatbandEdge, inner.fromLeft],
  ),
});

const openSweatband = (round: Side, height: number): Piece => {
  const whole = sweatband(round, height);
  return {
    ...whole,
    outline: whole.outline.map((edge) => (edge.kind === 'side' ? { ...edge, kind: 'hem' } : edge)),
    figures: [
      {
        name: 'Sweatband length',
        formula: 'the lower edge from one end of the opening to the other',
        worked: words`${exactMm(round.length)}`,
      },
    ],
    notes: [
      ...whole.notes,
      words`Turn the ends in at the edge of the opening, over the ends of the strap.`,
      words`The finished girth is this length and the strap across the opening, closed.`,
    ],
  };
};
