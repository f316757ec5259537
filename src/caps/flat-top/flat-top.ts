import { ovalOfGirth } from '../../geometry/oval.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import type { Figure } from '../../pattern/piece.ts';
import { exactMm, words } from '../../words.ts';
import { band } from '../parts/band/band.ts';
import { innerBand } from '../parts/band/inner-band.ts';
import { allowancesOf } from '../parts/seams/allowances.ts';
import { pleatCount } from '../parts/side-band/parameters.ts';
import { middleIsFree } from '../parts/side-band/side-band-wish.ts';
import { buttonMarks, strap } from '../parts/strap/strap.ts';
import { tipFacts } from '../parts/tip/tip-facts.ts';
import { tippedCrown } from '../parts/tipped-crown/tipped-crown.ts';
import { visorParts } from '../parts/visor/visor-parts.ts';
import type { CapDraft, Head, Style } from '../style.ts';
import { flatTopForm } from './form.ts';
import { type FlatTopValues, flatTopParameters } from './parameters.ts';
import { flatTopProblems } from './problems.ts';
import { flatTopSeams } from './seams.ts';

/** A flat tip, a flared side band, a straight band, a stiffened visor, a full lining, a strap with two buttons. */
export const flatTop: Style<FlatTopValues> = {
  id: 'flat-top',
  name: 'Flat-top cap',
  alsoCalled: ['baker boy', 'fisherman', 'mariner', 'cabbie'],
  tells: 'A flat round top on a side band that leans out over a straight band.',
  parameters: flatTopParameters,
  starts: [
    {
      name: 'Trim',
      values: {
        crownFullness: 50,
        sideBandHeight: 45,
        crownTilt: 0,
        crownGather: 0,
        bandHeight: 35,
        strap: true,
      },
    },
    {
      name: 'High in front',
      values: { crownFullness: 130, sideBandHeight: 60, crownTilt: 40, crownGather: 0, bandHeight: 40 },
    },
    {
      name: 'Full and floppy',
      values: {
        crownFullness: 150,
        sideBandHeight: 70,
        crownTilt: 0,
        crownGather: 0,
        bandHeight: 32,
        strap: false,
      },
    },
    {
      name: 'Pleated',
      values: {
        crownFullness: 180,
        sideBandHeight: 75,
        crownTilt: 0,
        crownGather: 0.3,
        gatherAs: 'pleats',
        pleats: 3,
        bandHeight: 32,
      },
    },
  ],
  problems: flatTopProblems,
  draft: (values, head) => draftFlatTop(values, head),
  form: flatTopForm,
};

const draftFlatTop = (values: FlatTopValues, head: Head): CapDraft => {
  // Girths: what goes round what.
  const finishedGirth = head.girth + values.ease;
  const crownGirth = finishedGirth + values.crownFullness;
  const girths = girthFigures(head.girth, values.ease, finishedGirth, values.crownFullness, crownGirth);

  // The visor first: the stretch of band it takes is marked on other pieces.
  const peak = visorParts(values, { ...head, girth: finishedGirth });

  // The shell.
  const rim = ovalOfGirth(crownGirth, values.tipRatio);
  const pleats = pleatCount(values);
  const shell = tippedCrown({
    layer: 'shell',
    cloth: 'outer',
    rim,
    openingGirth: finishedGirth,
    height: values.sideBandHeight,
    pieces: values.sideBandPieces,
    tilt: values.crownTilt,
    gather: values.crownGather,
    pleats,
    figures: girths,
  });
  const strapWish = { ...values, width: values.strapWidth, visorStretch: peak.stretch };
  const shellBand = band({
    id: 'band',
    name: 'Band',
    cuts: [
      { cloth: 'outer', count: 1 },
      { cloth: 'interlining', count: 1 },
    ],
    girth: finishedGirth,
    height: values.bandHeight,
    visorStretch: peak.stretch,
    top: 'band',
    eighths: values.sideBandPieces === '4' && middleIsFree(pleats),
    marks: values.strap ? buttonMarks(strapWish) : [],
    figures: girths.slice(0, 1),
    notes: [words`Interlining is cut on the stitch line, without allowance.`],
  });

  // Inside: a full lining, or a facing for the band alone.
  const lining = values.lining ? liningCrown(values, finishedGirth, crownGirth) : null;
  const inner = innerBand({
    lined: values.lining,
    girth: finishedGirth,
    height: values.bandHeight,
    visorStretch: peak.stretch,
    visorDepth: peak.depth,
    eighths: values.sideBandPieces === '4',
  });

  const [tipPiece, ...side] = shell.pieces;
  const pattern: Pattern = {
    pieces: [
      tipPiece!,
      ...side,
      ...peak.pieces,
      shellBand,
      ...(values.strap ? [strap(strapWish)] : []),
      ...(lining?.pieces ?? []),
      inner,
    ],
    seams: flatTopSeams({
      shell,
      lining,
      strap: values.strap,
      gather: values.crownGather,
      girth: finishedGirth,
      visorStretch: peak.stretch,
    }),
    allowances: allowancesOf(values),
  };
  return {
    finishedGirth,
    facts: tipFacts(rim, girths[1]!),
    insert: peak.insert,
    pattern,
  };
};

/** The lining stands as the shell does, but is never gathered: it would only make the seam thick. */
const liningCrown = (values: FlatTopValues, finishedGirth: number, shellCrown: number) => {
  const crownGirth = shellCrown - values.liningTake;
  return tippedCrown({
    layer: 'lining',
    cloth: 'lining',
    rim: ovalOfGirth(crownGirth, values.tipRatio),
    openingGirth: finishedGirth,
    height: values.sideBandHeight - values.liningTake,
    pieces: values.sideBandPieces,
    tilt: values.crownTilt,
    figures: [
      {
        name: 'Crown girth of the lining',
        formula: 'crown girth − lining smaller by',
        worked: words`${exactMm(shellCrown)} − ${exactMm(values.liningTake)} = ${exactMm(crownGirth)}`,
      },
    ],
  });
};

const girthFigures = (
  headGirth: number,
  ease: number,
  finished: number,
  fullness: number,
  crown: number,
): readonly Figure[] => [
  {
    name: 'Finished girth',
    formula: 'head girth + ease',
    worked: words`${exactMm(headGirth)} + ${exactMm(ease)} = ${exactMm(finished)}`,
  },
  {
    name: 'Crown girth',
    formula: 'finished girth + crown fullness',
    worked: words`${exactMm(finished)} + ${exactMm(fullness)} = ${exactMm(crown)}`,
  },
];
