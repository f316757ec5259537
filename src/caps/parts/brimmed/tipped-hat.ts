import type { Oval } from '../../../geometry/oval.ts';
import type { OvalParallel } from '../../../geometry/oval-parallel.ts';
import type { Figure } from '../../../pattern/piece.ts';
import { exactMm, words } from '../../../words.ts';
import type { FormStrip } from '../../form.ts';
import type { ValuesOf } from '../../parameter.ts';
import type { Head } from '../../style.ts';
import type { BrimValues } from '../brim/parameters.ts';
import { brimJoints } from '../brim/sections.ts';
import type { LiningValues } from '../lining/parameters.ts';
import { sideBandScheme } from '../side-band/side-band-wish.ts';
import { dropOf, sideSlope } from '../side-band/side-slope.ts';
import { sideBandStrips, tipStrip } from '../tipped-crown/form.ts';
import { narrowingCrown } from '../tipped-crown/opening.ts';
import type { narrowingCrownParameters } from '../tipped-crown/parameters.ts';
import { type TippedCrown, tippedCrown } from '../tipped-crown/tipped-crown.ts';

type CrownValues = ValuesOf<typeof narrowingCrownParameters>;
type HatValues = CrownValues & LiningValues & BrimValues & { readonly ease: number };

/** A crown of tip and side with the opening that a brim is sewn to. */
export interface TippedHat {
  readonly opening: OvalParallel;
  /** The edge of the tip. */
  readonly rim: Oval;
  readonly shell: TippedCrown;
  readonly lining: TippedCrown | null;
}

const crownOf = ({ brimShape, crownTaper, ease }: HatValues, { girth, ratio }: Head) =>
  narrowingCrown(girth + ease, brimShape === 'oval' ? ratio : 1, crownTaper);

/** What the brim is sewn to. */
export const hatOpening = (values: HatValues, head: Head): OvalParallel => crownOf(values, head).opening;

/** The crown of a hat with a brim, drawn round or on the head's oval as the brim is. `twice` where its inside is worn out too. */
export const tippedHat = (values: HatValues, head: Head, twice: boolean): TippedHat => {
  const { rim, opening } = crownOf(values, head);
  const girth = head.girth + values.ease;
  const shared = {
    openingGirth: girth,
    pieces: values.sideBandPieces,
    lower: 'lower',
    seamsBelow: brimJoints(values).filter((at) => !Number.isInteger(at * 4)),
    names: { tip: 'Tip', side: 'Side' },
  } as const;
  const shell = tippedCrown({
    ...shared,
    layer: 'shell',
    cloth: 'outer',
    rim,
    height: values.sideBandHeight,
    figures: girthFigures(values, head),
  });
  if (!values.lining) return { opening, rim, shell, lining: null };
  // What is worn either way round is as large inside as outside.
  const take = twice ? 0 : values.liningTake;
  const narrower = 1 - take / (girth - values.crownTaper);
  const lining = tippedCrown({
    ...shared,
    layer: 'lining',
    cloth: twice ? 'outer' : 'lining',
    rim: { halfLength: rim.halfLength * narrower, halfBreadth: rim.halfBreadth * narrower },
    height: values.sideBandHeight - take,
    figures: [
      {
        name: 'Crown girth of the lining',
        formula: 'crown girth − lining smaller by',
        worked: words`${exactMm(girth - values.crownTaper)} − ${exactMm(take)} = ${exactMm(girth - values.crownTaper - take)}`,
      },
    ],
  });
  return { opening, rim, shell, lining };
};

/** Tip and side as they stand, the opening level at 0. */
export const tippedHatStrips = (values: HatValues, head: Head): readonly FormStrip[] => {
  const { rim } = crownOf(values, head);
  const side = sideSlope(rim, head.girth + values.ease, values.sideBandHeight);
  const top = dropOf(side);
  return [
    { piece: 'tip', copy: 0, strip: tipStrip(rim, top) },
    ...sideBandStrips(side, sideBandScheme(values.sideBandPieces, 0, 0), top),
  ];
};

const girthFigures = ({ ease, crownTaper }: HatValues, head: Head): readonly Figure[] => [
  {
    name: 'Finished girth',
    formula: 'head girth + ease',
    worked: words`${exactMm(head.girth)} + ${exactMm(ease)} = ${exactMm(head.girth + ease)}`,
  },
  {
    name: 'Crown girth',
    formula: 'finished girth − narrower at the top by',
    worked: words`${exactMm(head.girth + ease)} − ${exactMm(crownTaper)} = ${exactMm(head.girth + ease - crownTaper)}`,
  },
];
