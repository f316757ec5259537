import type { EdgeUse, Seam } from '../../../pattern/seam.ts';
import { plain, ring } from '../seams/seam.ts';
import type { Brim } from './brim.ts';

/** What closes the upper brim and the under brim each to a ring. */
export const brimJoinSeams = ({ upper, under }: Brim): readonly Seam[] => [
  ...upper.joins.map(({ name, a, b }, i) =>
    plain(`brim${i + 1}`, `Brim seam ${i + 1}, ${name}`, 'side', [a], [b]),
  ),
  ...under.joins.map(({ name, a, b }, i) =>
    plain(`underBrim${i + 1}`, `Under brim seam ${i + 1}, ${name}`, 'side', [a], [b]),
  ),
];

/** Upper to under brim round the outer edge. */
export const brimEdgeSeam = ({ upper, under }: Brim): Seam =>
  ring('brimEdge', 'Brim outer edge, upper to under', 'brimEdge', upper.outer, under.outer);

/** Upper to under brim along the inner edge: basted, so that both are sewn to the crown as one. */
export const brimInnerSeam = ({ upper, under }: Brim): Seam =>
  ring('brimInner', 'Brim inner edge, upper to under', 'lower', upper.inner, under.inner);

/** The crown's lower edge to the brim: the hat's opening. */
export const brimToCrown = (lower: readonly EdgeUse[], { upper }: Brim): Seam =>
  ring('lowerEdge', 'Crown to brim', 'lower', lower, upper.inner);
