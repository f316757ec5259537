import type { Seam } from '../pattern/seam.ts';
import { type Part, partOf } from './parts.ts';
import type { Phase } from './step.ts';

/** What a seam does in a cap. */
export type Sort =
  | 'visorEdge'
  | 'brimSide'
  | 'brimEdge'
  | 'brimEdgeLast'
  | 'brimInner'
  | 'tip'
  | 'gore'
  | 'side'
  | 'binding'
  | 'bandBack'
  | 'bandTop'
  | 'liningTip'
  | 'liningGore'
  | 'liningSide'
  | 'innerBandBack'
  | 'innerBandTop'
  | 'sweatbandBack'
  | 'casingBack'
  | 'visorOn'
  | 'brimOn'
  | 'innerBrimOn'
  | 'liningIn'
  | 'innerBandOn'
  | 'sweatbandOn'
  | 'casingOn'
  | 'strapEdge'
  | 'backStrapEdge'
  | 'tieEdge'
  | 'other';

/** When each is sewn. */
const phaseOf: Readonly<Record<Sort, Phase>> = {
  visorEdge: 'visor',
  brimSide: 'visor',
  brimEdge: 'visor',
  brimEdgeLast: 'close',
  brimInner: 'visor',
  tip: 'crown',
  gore: 'crown',
  side: 'crown',
  binding: 'band',
  backStrapEdge: 'band',
  tieEdge: 'band',
  bandBack: 'band',
  bandTop: 'band',
  liningTip: 'lining',
  liningGore: 'lining',
  liningSide: 'lining',
  innerBandBack: 'lining',
  innerBandTop: 'lining',
  sweatbandBack: 'lining',
  casingBack: 'lining',
  visorOn: 'join',
  brimOn: 'join',
  innerBrimOn: 'join',
  liningIn: 'join',
  innerBandOn: 'join',
  sweatbandOn: 'close',
  casingOn: 'close',
  strapEdge: 'finish',
  other: 'join',
};

export const phaseOfSort = (sort: Sort): Phase => phaseOf[sort];

/** What a seam does, by its kind and the parts that meet in it. */
export const sortOf = (seam: Seam, order: readonly Seam[]): Sort => {
  const parts = new Set([...seam.a, ...seam.b].map(({ piece }) => partOf(piece)));
  const has = (...some: Part[]): boolean => some.every((part) => parts.has(part));
  const only = (...some: Part[]): boolean => [...parts].every((part) => some.includes(part));
  if (seam.kind === 'visorEdge') return 'visorEdge';
  if (seam.kind === 'brimEdge') return isLast(seam, order) ? 'brimEdgeLast' : 'brimEdge';
  if (seam.kind === 'strapEdge') return has('tie') ? 'tieEdge' : has('strap') ? 'strapEdge' : 'backStrapEdge';
  if (has('binding')) return 'binding';
  if (only('brim')) return seam.kind === 'side' ? 'brimSide' : 'brimInner';
  if (has('visor')) return 'visorOn';
  if (only('sweatband')) return 'sweatbandBack';
  if (has('sweatband')) return 'sweatbandOn';
  if (only('casing')) return 'casingBack';
  if (has('casing')) return 'casingOn';
  if (only('band')) return 'bandBack';
  if (only('innerBand')) return 'innerBandBack';
  if (has('brim')) return has('lining') ? 'innerBrimOn' : 'brimOn';
  if (has('innerBand', 'lining')) return 'innerBandTop';
  if (has('innerBand')) return 'innerBandOn';
  if (has('band')) return 'bandTop';
  if (only('lining')) return liningSort(seam);
  if (only('crown')) return crownSort(seam);
  return has('lining', 'crown') ? 'liningIn' : 'other';
};

/** Whether the brim's edge closes the whole hat: both its crowns are sewn to it before. */
const isLast = (seam: Seam, order: readonly Seam[]): boolean =>
  order.findIndex(({ id }) => id === 'lowerEdge') < order.indexOf(seam);

const crownSort = ({ kind }: Seam): Sort => (kind === 'crown' ? 'tip' : kind === 'gore' ? 'gore' : 'side');

const liningSort = ({ kind }: Seam): Sort =>
  kind === 'crown' ? 'liningTip' : kind === 'gore' ? 'liningGore' : 'liningSide';
