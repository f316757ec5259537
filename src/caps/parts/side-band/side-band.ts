import { halves, whole } from './side-band-halves.ts';
import { pairs, quarters } from './side-band-quarters.ts';
import { type SideBand, type SideBandWish, sideBandScheme } from './side-band-wish.ts';

const makers = { whole, halves, quarters, pairs };

/** A side band in as many pieces as are wished. */
export const sideBand = (wish: SideBandWish): SideBand =>
  makers[sideBandScheme(wish.pieces, wish.slope.tilt, wish.pleats)](wish);
