import { parallelAngle } from '../../../geometry/oval-parallel.ts';
import type { FormStrip } from '../../form.ts';
import { type BrimSlope, brimStrip } from './brim-slope.ts';
import type { Place } from './places.ts';

/** The upper brim as it stands, the opening level at 0, going round from the centre back. */
export const brimStrips = (slope: BrimSlope, places: readonly Place[]): readonly FormStrip[] =>
  places.map(({ piece, copy, from, to }) => ({
    piece,
    copy,
    strip: brimStrip(slope, parallelAngle(slope.opening, from), parallelAngle(slope.opening, to)),
    open: true,
  }));
