import { walker } from '../../pattern/chain.ts';
import type { Piece } from '../../pattern/piece.ts';
import type { Seam } from '../../pattern/seam.ts';
import { words } from '../../words.ts';
import { openingOf } from '../opening.ts';
import { band } from '../parts/band/band.ts';
import { backSeam, bandEdgeSeam, topSeam, visorStretchOf } from '../parts/band/band-seams.ts';
import { innerBand } from '../parts/band/inner-band.ts';
import { topNotchesFor } from '../parts/band/top-notches.ts';
import { girthFigures } from '../parts/girth-figures.ts';
import type { GoreLayers } from '../parts/gore/gore-layers.ts';
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
  const opening = openingOf(head, values.ease);
  const strapped = hasStrap(values);
  const strapWish = { ...values, width: values.strapWidth, visorStretch: visor.stretch };
  const { bandHeight: height, bandGrain: grain } = values;
  const shared = { height, grain, visorStretch: visor.stretch, eighths: false };
  const outer = band({
    ...shared,
    girth: opening.shell,
    topNotches: topNotchesFor(walker(shell.pieces)(shell.lower)),
    id: 'band',
    name: 'Band',
    cuts: [
      { cloth: 'outer', count: 1 },
      { cloth: 'interlining', count: 1 },
    ],
    top: 'band',
    marks: strapped ? buttonMarks(strapWish) : [],
    figures: girthFigures(head, values.ease),
    notes: [words`Interlining is cut on the stitch line, without allowance.`],
  });
  const hasVisor = visor.pieces.length > 0;
  const inner = innerBand({
    ...shared,
    opening,
    ...(lining ? { topNotches: topNotchesFor(walker(lining.pieces)(lining.lower)) } : {}),
    lined: lining !== null,
    visorDepth: visor.depth,
  });
  return {
    outside: [...visor.pieces, outer, ...(strapped ? [strap(strapWish)] : [])],
    inside: [inner],
    first: [...(hasVisor ? [visorEdgeSeam(visor)] : []), ...(strapped ? [strapSeam()] : [])],
    last: [
      backSeam('back', 'Band back seam', 'band'),
      topSeam('bandToGores', 'Gores to band', shell.lower, 'band'),
      ...(hasVisor ? [visorSeam('band', [visorStretchOf('band', opening.shell, visor.stretch)])] : []),
      backSeam('liningBack', lining ? 'Lining band back seam' : 'Facing back seam', 'liningBand'),
      ...(lining ? [topSeam('liningBandToGores', 'Lining gores to band', lining.lower, 'liningBand')] : []),
      bandEdgeSeam(lining !== null, opening),
    ],
  };
};
