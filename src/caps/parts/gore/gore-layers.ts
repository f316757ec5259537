import type { SeamKind } from '../../../pattern/piece.ts';
import { exactMm, words } from '../../../words.ts';
import type { Form } from '../../form.ts';
import { openingOf } from '../../opening.ts';
import type { Head } from '../../style.ts';
import { bandStrip } from '../band/form.ts';
import { girthFigures, girthName, layerFigure } from '../girth-figures.ts';
import { asLining, UNLINED } from '../lining/as-lining.ts';
import { goreCopies, goreLowerEdge, goreStrips } from './form.ts';
import { goreLength, goreLengthFigure } from './gore-length.ts';
import { type CrownWish, type GoreReach, goreReach } from './gore-reach.ts';
import { type FrontSeam, type GoredCrown, goredCrown } from './gored-crown.ts';

export interface GoreLayersWish {
  readonly ease: number;
  readonly gores: number;
  readonly frontSeam: FrontSeam;
  readonly crownRoom: number;
  readonly goreWidest: number;
  /** None where the crown fits close. */
  readonly goreFullness?: number;
  readonly lining: boolean;
  readonly liningTake: number;
}

/** Shell and lining of a crown of gores. */
export interface GoreLayers {
  readonly shell: GoredCrown;
  readonly lining: GoredCrown | null;
}

const crownOf = (
  wish: GoreLayersWish,
  girth: number,
  head: Head,
  bandHeight: number,
  take: number,
): CrownWish => ({
  gores: wish.gores,
  girth,
  length: goreLength(wish.crownRoom, head, bandHeight) - take,
  fullness: Math.max(0, (wish.goreFullness ?? 0) - take),
  widest: wish.goreWidest,
});

/** The shell's crown above a band of some height (mm; 0 where there is none). */
export const shellReach = (wish: GoreLayersWish, head: Head, bandHeight: number): GoreReach =>
  goreReach(crownOf(wish, openingOf(head, wish.ease).shell, head, bandHeight, 0));

/** The lining's: on its own girth, shorter, and less full where there is fullness. */
export const liningReach = (wish: GoreLayersWish, head: Head, bandHeight: number): GoreReach =>
  goreReach(crownOf(wish, openingOf(head, wish.ease).lining, head, bandHeight, wish.liningTake));

/** It in space, on a band of some height (mm; 0 where there is none); nothing where there is no lining. */
export const goreLining = (values: GoreLayersWish, head: Head, band: number): Form => {
  if (!values.lining) return UNLINED;
  const crown = { ...values, reach: liningReach(values, head, band) };
  return asLining([
    ...goreStrips(crown, goreCopies(values.gores), band),
    ...(band > 0 ? [bandStrip(goreLowerEdge(crown), band)] : []),
  ]);
};

/**
 * The lining's lower edge is the shell's, less the cloth between them; it is shorter, and less full where there is fullness.
 * `seamsBelow` are the places, in parts of the girth from the centre back, of seams in what is sewn to the lower edge.
 */
export const goreLayers = (
  wish: GoreLayersWish,
  head: Head,
  bandHeight: number,
  lower: SeamKind,
  seamsBelow: readonly number[] = [],
): GoreLayers => {
  const { gores, frontSeam, lining, liningTake: take } = wish;
  const opening = openingOf(head, wish.ease);
  const length = goreLengthFigure(wish.crownRoom, head, bandHeight);
  const shell = goredCrown({
    gores,
    frontSeam,
    reach: shellReach(wish, head, bandHeight),
    kindOf: () => ({ id: 'gore', name: 'Gore', cloths: ['outer'] }),
    lower,
    seamsBelow,
    girthName: girthName(opening, opening.shell),
    figures: [...girthFigures(head, wish.ease), length],
  });
  if (!lining) return { shell, lining: null };
  const inside = crownOf(wish, opening.lining, head, bandHeight, take);
  return {
    shell,
    lining: goredCrown({
      gores,
      frontSeam,
      reach: liningReach(wish, head, bandHeight),
      kindOf: () => ({ id: 'liningGore', name: 'Lining gore', cloths: ['lining'] }),
      lower,
      seamsBelow,
      named: { id: 'lining', name: 'Lining: ' },
      girthName: girthName(opening, opening.lining, 'lining'),
      figures: [
        ...layerFigure(opening, opening.lining, 'lining'),
        {
          name: 'Up the middle of a lining gore',
          formula: 'up the middle of a gore − lining smaller by',
          worked: words`${exactMm(inside.length + take)} − ${exactMm(take)} = ${exactMm(inside.length)}`,
        },
      ],
    }),
  };
};
