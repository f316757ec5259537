import type { Oval } from '../../../geometry/oval.ts';
import type { OvalParallel } from '../../../geometry/oval-parallel.ts';
import type { Cloth, Figure } from '../../../pattern/piece.ts';
import { exactMm, words } from '../../../words.ts';
import type { Form, FormStrip } from '../../form.ts';
import { type Opening, openingOf } from '../../opening.ts';
import type { ValuesOf } from '../../parameter.ts';
import type { Head } from '../../style.ts';
import { girthFigures, girthName, liningGirth } from '../girth-figures.ts';
import { asLining } from '../lining/as-lining.ts';
import type { LiningValues } from '../lining/parameters.ts';
import { sideBandScheme } from '../side-band/side-band-wish.ts';
import { dropOf, type SideSlope, sideSlope } from '../side-band/side-slope.ts';
import { sideBandStrips, tipStrip } from './form.ts';
import { narrowingCrown } from './opening.ts';
import type { narrowingCrownParameters } from './parameters.ts';
import { type TippedCrown, tippedCrown } from './tipped-crown.ts';

type CrownValues = ValuesOf<typeof narrowingCrownParameters> & { readonly ease: number };

interface LayersWish {
  readonly values: CrownValues & LiningValues;
  readonly head: Head;
  /** Breadth by length of the opening: 1 to draw it round. */
  readonly ratio: number;
  /** The inside is worn out too: of outer cloth, as large as the outside. */
  readonly twice?: boolean;
  /** What else tip and side are cut from, to hold them out. */
  readonly inside?: Cloth | undefined;
  /** Where what is sewn to the lower edge has seams, in parts of the girth from the centre back. */
  readonly seamsBelow?: readonly number[];
}

/** A tip and a side that stand straight up or narrow upwards, and the lining of both. */
export interface NarrowingLayers {
  readonly girths: Opening;
  /** The shell's lower edge. */
  readonly opening: OvalParallel;
  /** The edge of the tip. */
  readonly rim: Oval;
  readonly shell: TippedCrown;
  readonly lining: TippedCrown | null;
}

export const narrowingLayers = (wish: LayersWish): NarrowingLayers => {
  const { values, head, ratio, twice = false, inside, seamsBelow = [] } = wish;
  const girths = openingOf(head, values.ease);
  const { rim, opening } = narrowingCrown(girths.shell, ratio, values.crownTaper);
  const shared = {
    pieces: values.sideBandPieces,
    lower: 'lower',
    seamsBelow,
    names: { tip: 'Tip', side: 'Side' },
  } as const;
  const shell = tippedCrown({
    ...shared,
    layer: 'shell',
    cloth: 'outer',
    inside,
    rim,
    openingGirth: girths.shell,
    girthName: girthName(girths, girths.shell),
    height: values.sideBandHeight,
    figures: [...girthFigures(head, values.ease), crownFigure(girths, values.crownTaper)],
  });
  if (!values.lining) return { girths, opening, rim, shell, lining: null };
  const own = liningOf(wish);
  const lining = tippedCrown({
    ...shared,
    layer: 'lining',
    cloth: twice ? 'outer' : 'lining',
    rim: own.rim,
    openingGirth: own.openingGirth,
    girthName: girthName(girths, own.openingGirth, twice ? 'shell' : 'lining'),
    height: own.height,
    figures: [own.figure],
  });
  return { girths, opening, rim, shell, lining };
};

/** What the lining is drawn on. What is worn either way round is as large inside as outside. */
const liningOf = ({ values, head, ratio, twice = false }: LayersWish) => {
  const girths = openingOf(head, values.ease);
  const { rim } = narrowingCrown(girths.shell, ratio, values.crownTaper);
  const crownGirth = girths.shell - values.crownTaper;
  const take = twice ? 0 : values.liningTake;
  const openingGirth = twice ? girths.shell : girths.lining;
  const { girth, figure } = liningGirth({ ...girths, lining: openingGirth }, 'Crown girth', crownGirth, take);
  const narrower = girth / crownGirth;
  return {
    rim: { halfLength: rim.halfLength * narrower, halfBreadth: rim.halfBreadth * narrower },
    openingGirth,
    height: values.sideBandHeight - take,
    figure,
  };
};

/** Tip and side as they stand, the opening level at 0. */
export const narrowingStrips = (values: CrownValues, head: Head, ratio: number): readonly FormStrip[] => {
  const girth = openingOf(head, values.ease).shell;
  const { rim } = narrowingCrown(girth, ratio, values.crownTaper);
  return standing(values, sideSlope(rim, girth, values.sideBandHeight));
};

/** Those of the lining. */
export const narrowingLining = (wish: LayersWish): Form => {
  const { rim, openingGirth, height } = liningOf(wish);
  return asLining(standing(wish.values, sideSlope(rim, openingGirth, height)));
};

const standing = ({ sideBandPieces }: CrownValues, side: SideSlope): readonly FormStrip[] => [
  { piece: 'tip', copy: 0, strip: tipStrip(side.rim, dropOf(side)) },
  ...sideBandStrips(side, sideBandScheme(sideBandPieces, 0, 0), dropOf(side)),
];

const crownFigure = (girths: Opening, taper: number): Figure => ({
  name: 'Crown girth',
  formula: `${girthName(girths, girths.shell)} − narrower at the top by`,
  worked: words`${exactMm(girths.shell)} − ${exactMm(taper)} = ${exactMm(girths.shell - taper)}`,
});
