import { pathLength } from '../../geometry/measure.ts';
import { type Oval, ovalOfGirth } from '../../geometry/oval.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import type { Figure, Piece } from '../../pattern/piece.ts';
import { exactMm, mm, radians, ratio, words } from '../../words.ts';
import { band, turningGap, turningGapMark, turningGapNote } from '../parts/band.ts';
import { sideBand } from '../parts/side-band.ts';
import { sideSlope } from '../parts/side-band-shape.ts';
import { buttonMarks, strap } from '../parts/strap.ts';
import { tip } from '../parts/tip.ts';
import { stiffener, visor, visorInside, visorMoved } from '../parts/visor.ts';
import { fitInsert, insertShape } from '../parts/visor-insert.ts';
import { visorShape } from '../parts/visor-shape.ts';
import type { CapDraft, Head, InsertFit, Style } from '../style.ts';
import { allowancesOf } from './allowances.ts';
import { type FlatTopValues, flatTopParameters } from './parameters.ts';
import { flatTopProblems } from './problems.ts';
import { flatTopSeams } from './seams.ts';

/** A flat tip, a flared side band, a straight band, a stiffened visor, a full lining, a strap with two buttons. */
export const flatTop: Style<FlatTopValues> = {
  id: 'flat-top',
  name: 'Flat-top cap',
  alsoCalled: ['baker boy', 'fisherman', 'mariner', 'cabbie'],
  parameters: flatTopParameters,
  problems: flatTopProblems,
  draft: (values, head) => draftFlatTop(values, head),
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
  const eighths = values.sideBandPieces === '4';
  const shellTip = tip({
    id: 'tip',
    name: 'Tip',
    cuts: [{ cloth: 'outer', count: 1 }],
    rim,
    eighths,
    figures: girths,
  });
  const shellSide = sideBand({
    id: 'sideBand',
    name: 'Side band',
    cloth: 'outer',
    slope: sideSlope(rim, finishedGirth, values.sideBandHeight),
    pieces: values.sideBandPieces,
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
    eighths: values.sideBandPieces === '4',
    marks: values.strap ? buttonMarks(strapWish) : [],
    figures: girths.slice(0, 1),
    notes: [words`Interlining is cut on the stitch line, without allowance.`],
  });

  // Inside: a full lining, or a facing for the band alone.
  const inside = values.lining
    ? liningParts(values, finishedGirth, crownGirth, peak)
    : { side: null, pieces: [facing(values, finishedGirth, peak.stretch)] };

  const pattern: Pattern = {
    pieces: [
      shellTip,
      ...shellSide.pieces,
      ...peak.pieces,
      shellBand,
      ...(values.strap ? [strap(strapWish)] : []),
      ...inside.pieces,
    ],
    seams: flatTopSeams({
      shellSide,
      liningSide: inside.side,
      strap: values.strap,
      girth: finishedGirth,
      visorStretch: peak.stretch,
    }),
    allowances: allowancesOf(values),
  };
  return {
    finishedGirth,
    crownGirth,
    tip: { length: 2 * rim.halfLength, breadth: 2 * rim.halfBreadth },
    visor: { innerEdge: peak.stretch, insert: peak.insert },
    pattern,
  };
};

interface VisorParts {
  readonly pieces: readonly Piece[];
  /** The stretch of band that the cover is sewn to, as measured on the cover. */
  readonly stretch: number;
  readonly depth: number;
  readonly insert: InsertFit | null;
}

const visorParts = (values: FlatTopValues, opening: Head): VisorParts => {
  const oval = ovalOfGirth(opening.girth, opening.ratio);
  return values.visorSource === 'insert' ? insertParts(values, oval) : draftedParts(values, oval);
};

const draftedParts = (values: FlatTopValues, opening: Oval): VisorParts => {
  const shape = visorShape({
    opening,
    innerEdge: values.visorLength,
    depth: values.visorDepth,
    drop: values.visorDrop,
    fullness: values.visorFullness,
    tipRounding: values.visorTipRounding,
  });
  const { halfLength: a, halfBreadth: b } = opening;
  const front = (b * b) / a;
  const figures: readonly Figure[] = [
    {
      name: 'Radius of the head’s oval at the front',
      formula: 'half breadth² ÷ half length',
      worked: words`${exactMm(b)}² ÷ ${exactMm(a)} = ${exactMm(front)}`,
    },
    {
      name: 'Flat radius of the inner edge at the centre',
      formula: 'front radius ÷ cosine of the drop',
      worked: words`${exactMm(front)} ÷ cos ${radians(values.visorDrop)} = ${exactMm(front / Math.cos(values.visorDrop))}`,
    },
    {
      name: 'Head breadth by length',
      formula: 'breadth ÷ length, 80 % unless measured',
      worked: words`${exactMm(2 * b)} ÷ ${exactMm(2 * a)} = ${ratio(b / a)}`,
    },
  ];
  return {
    pieces: [visor({ shape, figures }), stiffener(shape, values.stiffenerClearance)],
    stretch: pathLength(shape.inner),
    depth: values.visorDepth,
    insert: null,
  };
};

const insertParts = (values: FlatTopValues, opening: Oval): VisorParts => {
  const insert = {
    width: values.insertWidth,
    depth: values.insertDepth,
    bow: values.insertBow,
    widths: values.insertWidths,
  };
  const own = insertShape(insert);
  const cover = visorMoved(own, values.stiffenerClearance);
  const fit = fitInsert(insert, cover, opening);
  const figures: readonly Figure[] = [
    {
      name: 'Inner edge of the cover',
      formula: 'inner edge of the insert, moved out by the clearance',
      worked: words`${exactMm(fit.innerEdge)}, ${exactMm(values.stiffenerClearance)} further out = ${exactMm(fit.stretch)}`,
    },
  ];
  const check = visorInside({
    id: 'stiffener',
    name: 'Insert outline',
    cuts: [],
    shape: own,
    notes: [words`Lay the bought insert on this to see that it was measured well.`],
  });
  return {
    pieces: [visor({ shape: cover, figures }), check],
    stretch: fit.stretch,
    depth: values.insertWidths[0] ?? values.insertDepth,
    insert: fit,
  };
};

const liningParts = (values: FlatTopValues, finishedGirth: number, shellCrown: number, peak: VisorParts) => {
  const crownGirth = shellCrown - values.liningTake;
  const rim = ovalOfGirth(crownGirth, values.tipRatio);
  const side = sideBand({
    id: 'liningSide',
    name: 'Lining side band',
    cloth: 'lining',
    slope: sideSlope(rim, finishedGirth, values.sideBandHeight - values.liningTake),
    pieces: values.sideBandPieces,
  });
  const figures: readonly Figure[] = [
    {
      name: 'Crown girth of the lining',
      formula: 'crown girth − lining smaller by',
      worked: words`${exactMm(shellCrown)} − ${exactMm(values.liningTake)} = ${exactMm(crownGirth)}`,
    },
  ];
  const gap = turningGap(peak.depth);
  const pieces: readonly Piece[] = [
    tip({
      id: 'liningTip',
      name: 'Lining tip',
      cuts: [{ cloth: 'lining', count: 1 }],
      rim,
      eighths: values.sideBandPieces === '4',
      figures,
    }),
    ...side.pieces,
    band({
      id: 'liningBand',
      name: 'Lining band',
      cuts: [{ cloth: 'lining', count: 1 }],
      girth: finishedGirth,
      height: values.bandHeight,
      visorStretch: peak.stretch,
      top: 'band',
      eighths: values.sideBandPieces === '4',
      marks: [turningGapMark(finishedGirth, values.bandHeight, gap)],
      figures: [
        {
          name: 'Turning gap',
          formula: 'visor depth + 25 mm of room, up to the next 5 mm',
          worked: words`${mm(peak.depth)} + ${mm(25)} → ${mm(gap)}`,
        },
      ],
      notes: [turningGapNote(gap)],
    }),
  ];
  return { side, pieces };
};

/** Without a lining the band is faced with its own cloth; the facing's upper edge is neatened and left free. */
const facing = (values: FlatTopValues, girth: number, visorStretch: number): Piece =>
  band({
    id: 'liningBand',
    name: 'Band facing',
    cuts: [{ cloth: 'outer', count: 1 }],
    girth,
    height: values.bandHeight,
    visorStretch,
    top: 'band',
    eighths: values.sideBandPieces === '4',
    notes: [words`The upper edge is neatened and caught down by hand over the band seam.`],
  });

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
