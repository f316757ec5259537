import type { Side } from '../../pattern/chain.ts';
import type { Piece } from '../../pattern/piece.ts';
import type { EdgeUse, Seam } from '../../pattern/seam.ts';
import { exactMm, words } from '../../words.ts';
import type { Opening } from '../opening.ts';
import type { Fastening } from '../parts/back-strap/fastening.ts';
import { inside, ring } from '../parts/seams/seam.ts';
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
  opening: Opening,
): { readonly sweatband: Piece; readonly seam: Seam } => ({
  sweatband: openSweatband(round, height, opening.inner / opening.shell),
  seam: inside(
    ring(
      'lowerEdge',
      'Crown to sweatband, lower edge, closed by the strap',
      'lower',
      [outer.toRight, ...crown, outer.fromLeft],
      [inner.toRight, sweatbandEdge, inner.fromLeft],
    ),
    opening.shell,
    opening.inner,
  ),
});

const openSweatband = (round: Side, height: number, within: number): Piece => {
  const whole = sweatband(round, height, 'sweatband', within);
  return {
    ...whole,
    outline: whole.outline.map((edge) => (edge.kind === 'side' ? { ...edge, kind: 'hem' } : edge)),
    figures: [
      {
        name: within === 1 ? 'Sweatband length' : 'Lower edge of the crown',
        formula: 'the lower edge from one end of the opening to the other',
        worked: words`${exactMm(round.length)}`,
      },
      ...(within === 1 ? [] : whole.figures),
    ],
    notes: [
      ...whole.notes,
      words`Turn the ends in at the edge of the opening, over the ends of the strap.`,
      words`The finished girth is this length and the strap across the opening, closed.`,
    ],
  };
};
