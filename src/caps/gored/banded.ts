import { walker } from '../../pattern/chain.ts';
import type { Piece } from '../../pattern/piece.ts';
import type { Seam } from '../../pattern/seam.ts';
import { exactMm, words } from '../../words.ts';
import { band } from '../parts/band/band.ts';
import { backSeam, topSeam, visorStretchOf } from '../parts/band/band-seams.ts';
import { innerBand } from '../parts/band/inner-band.ts';
import { topNotchesFor } from '../parts/band/top-notches.ts';
import type { GoreLayers } from '../parts/gore/gore-layers.ts';
import { one, ring } from '../parts/seams/seam.ts';
import { buttonMarks, strap } from '../parts/strap/strap.ts';
import { strapSeam } from '../parts/strap/strap-seam.ts';
import type { VisorParts } from '../parts/visor/visor-parts.ts';
import { visorEdgeSeam, visorSeam } from '../parts/visor/visor-seams.ts';
import type { Head } from '../style.ts';
import { type GoredValues, hasStrap } from './parameters.ts';

/** What is below the gores. */
export interface GoredEdge {
  readonly outside: readonly Piece[];
  readonly inside: readonly Piece[];
  /** Sewn before the gores, and after them. */
  readonly first: readonly Seam[];
  readonly last: readonly Seam[];
}

/** Band, visor, strap and inner band of a gored cap. */
export const banded = (
  values: GoredValues,
  head: Head,
  { shell, lining }: GoreLayers,
  visor: VisorParts,
): GoredEdge => {
  const girth = head.girth + values.ease;
  const strapped = hasStrap(values);
  const strapWish = { ...values, width: values.strapWidth, visorStretch: visor.stretch };
  const shared = {
    girth,
    height: values.bandHeight,
    visorStretch: visor.stretch,
    eighths: false,
    topNotches: topNotchesFor(walker(shell.pieces)(shell.lower)),
  };
  const outer = band({
    ...shared,
    id: 'band',
    name: 'Band',
    cuts: [
      { cloth: 'outer', count: 1 },
      { cloth: 'interlining', count: 1 },
    ],
    top: 'band',
    marks: strapped ? buttonMarks(strapWish) : [],
    figures: [
      {
        name: 'Finished girth',
        formula: 'head girth + ease',
        worked: words`${exactMm(head.girth)} + ${exactMm(values.ease)} = ${exactMm(girth)}`,
      },
    ],
    notes: [words`Interlining is cut on the stitch line, without allowance.`],
  });
  const hasVisor = visor.pieces.length > 0;
  const { topNotches, ...plainTop } = shared;
  const inner = innerBand({
    ...plainTop,
    ...(lining ? { topNotches } : {}),
    lined: lining !== null,
    visorDepth: visor.depth,
  });
  return {
    outside: [...visor.pieces, outer, ...(strapped ? [strap(strapWish)] : [])],
    inside: [inner],
    first: [...(hasVisor ? [visorEdgeSeam()] : []), ...(strapped ? [strapSeam()] : [])],
    last: [
      backSeam('back', 'Band back seam', 'band'),
      topSeam('bandToGores', 'Gores to band', shell.lower, 'band'),
      ...(hasVisor ? [visorSeam('band', [visorStretchOf('band', girth, visor.stretch)])] : []),
      backSeam('liningBack', lining ? 'Lining band back seam' : 'Facing back seam', 'liningBand'),
      ...(lining ? [topSeam('liningBandToGores', 'Lining gores to band', lining.lower, 'liningBand')] : []),
      ring(
        'lowerEdge',
        lining ? 'Band to lining band, lower edge' : 'Band to facing, lower edge',
        'lower',
        [one('band', 'bottom')],
        [one('liningBand', 'bottom')],
      ),
    ],
  };
};
