import { ovalOfGirth } from '../../geometry/oval.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import type { Figure } from '../../pattern/piece.ts';
import { exactMm, words } from '../../words.ts';
import { type Opening, openingOf } from '../opening.ts';
import { band } from '../parts/band/band.ts';
import { innerBand } from '../parts/band/inner-band.ts';
import { girthFigures, girthName, liningGirth } from '../parts/girth-figures.ts';
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
  inside: ({ lining }) => [lining ? 'lining' : 'outer', 'interlining'],
  draft: (values, head) => draftFlatTop(values, head),
  form: flatTopForm,
};

const draftFlatTop = (values: FlatTopValues, head: Head): CapDraft => {
  // Girths: what goes round what.
  const opening = openingOf(head, values.ease);
  const crownGirth = opening.shell + values.crownFullness;
  const girths = girthFigures(head, values.ease);
  const crownFigures = [...girths, crownFigure(opening, values.crownFullness)];

  // The visor first: the stretch of band it takes is marked on other pieces.
  const peak = visorParts(values, { ...head, girth: opening.shell });

  // The shell.
  const rim = ovalOfGirth(crownGirth, values.tipRatio);
  const pleats = pleatCount(values);
  const shell = tippedCrown({
    layer: 'shell',
    cloth: 'outer',
    rim,
    openingGirth: opening.shell,
    girthName: girthName(opening, opening.shell),
    height: values.sideBandHeight,
    pieces: values.sideBandPieces,
    tilt: values.crownTilt,
    gather: values.crownGather,
    pleats,
    figures: crownFigures,
  });
  const strapWish = { ...values, width: values.strapWidth, visorStretch: peak.stretch };
  const shellBand = band({
    id: 'band',
    name: 'Band',
    cuts: [
      { cloth: 'outer', count: 1 },
      { cloth: 'interlining', count: 1 },
    ],
    girth: opening.shell,
    height: values.bandHeight,
    grain: values.bandGrain,
    visorStretch: peak.stretch,
    top: 'band',
    eighths: values.sideBandPieces === '4' && middleIsFree(pleats),
    marks: values.strap ? buttonMarks(strapWish) : [],
    figures: girths,
    notes: [words`Interlining is cut on the stitch line, without allowance.`],
  });

  // Inside: a full lining, or a facing for the band alone.
  const lining = values.lining ? liningCrown(values, opening, crownGirth) : null;
  const inner = innerBand({
    lined: values.lining,
    opening,
    height: values.bandHeight,
    grain: values.bandGrain,
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
      opening,
      visor: peak,
    }),
    allowances: allowancesOf(values),
  };
  return {
    finishedGirth: opening.finished,
    facts: tipFacts(rim, crownFigures.slice(1)),
    insert: peak.insert,
    pattern,
  };
};

/** The lining stands as the shell does, but is never gathered: it would only make the seam thick. */
const liningCrown = (values: FlatTopValues, opening: Opening, shellCrown: number) => {
  const { girth: crownGirth, figure } = liningGirth(opening, 'Crown girth', shellCrown, values.liningTake);
  return tippedCrown({
    layer: 'lining',
    cloth: 'lining',
    rim: ovalOfGirth(crownGirth, values.tipRatio),
    openingGirth: opening.lining,
    girthName: girthName(opening, opening.lining, 'lining'),
    height: values.sideBandHeight - values.liningTake,
    pieces: values.sideBandPieces,
    tilt: values.crownTilt,
    figures: [figure],
  });
};

const crownFigure = (opening: Opening, fullness: number): Figure => ({
  name: 'Crown girth',
  formula: `${girthName(opening, opening.shell)} + crown fullness`,
  worked: words`${exactMm(opening.shell)} + ${exactMm(fullness)} = ${exactMm(opening.shell + fullness)}`,
});
