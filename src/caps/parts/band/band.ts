import { line } from '../../../geometry/path.ts';
import { point } from '../../../geometry/point.ts';
import type { Cut, Figure, Notch, Piece, PieceMark, SeamKind } from '../../../pattern/piece.ts';
import { exactMm, mm, type Words, words } from '../../../words.ts';
import { eighthNotches, quarterNotches } from '../girth-notches.ts';
import { rectangle } from '../rectangle.ts';
import { type StripGrain, stripGrain } from '../strip-grain.ts';

interface BandWish {
  readonly id: string;
  readonly name: string;
  readonly cuts: readonly Cut[];
  /** Round the seam line, mm: the finished girth. */
  readonly girth: number;
  readonly height: number;
  readonly grain: StripGrain;
  /** The stretch of the lower edge, centred on the front, that the visor is sewn to; 0 without one. */
  readonly visorStretch: number;
  /** How half of that comes about; from the visor's inner edge where left out. */
  readonly visorFormula?: string;
  readonly top: SeamKind;
  /** Notches between the quarters of the upper edge too, where the side band comes in quarters. */
  readonly eighths: boolean;
  /** The notches of the upper edge, mm along it from the wearer's-right end; the quarters and eighths where left out. */
  readonly topNotches?: readonly Omit<Notch, 'edge'>[];
  readonly marks?: readonly PieceMark[];
  readonly figures?: readonly Figure[];
  readonly notes?: readonly Words[];
}

/** A straight band, centre front in the middle, its ends meeting at the centre back. */
export const band = ({
  id,
  name,
  cuts,
  girth,
  height,
  grain,
  visorStretch,
  top,
  eighths,
  ...rest
}: BandWish): Piece => {
  const { bottom, right, top: upper, left } = rectangle(girth, height);
  return {
    id,
    name,
    cuts,
    outline: [
      { name: 'bottom', path: bottom, kind: 'lower' },
      { name: 'right', path: right, kind: 'side' },
      { name: 'top', path: upper, kind: top },
      { name: 'left', path: left, kind: 'side' },
    ],
    foldable: true,
    ...stripGrain(girth, height, grain, 'bandGrain'),
    notches: [
      ...(rest.topNotches?.map((notch) => ({ ...notch, edge: 'top' })) ?? [
        ...quarterNotches('top', girth),
        ...(eighths ? eighthNotches('top', girth) : []),
      ]),
      ...quarterNotches('bottom', girth),
      ...(visorStretch > 0 ? visorEnds(girth, visorStretch) : []),
    ],
    centreLines: [[line(point(0, 0), point(0, height))]],
    marks: rest.marks ?? [],
    labelAt: point(girth * 0.33, height / 2),
    dimensions: [
      { name: 'Length', along: bottom },
      { name: 'Height', along: right },
    ],
    figures: [
      ...(rest.figures ?? []),
      ...(visorStretch > 0
        ? [
            {
              name: 'From the centre front to each end of the visor',
              formula: rest.visorFormula ?? 'visor inner edge ÷ 2',
              worked: words`${exactMm(visorStretch)} ÷ 2 = ${exactMm(visorStretch / 2)}`,
            },
          ]
        : []),
    ],
    notes: rest.notes ?? [],
  };
};

const visorEnds = (girth: number, stretch: number): readonly Notch[] =>
  [-1, 1].map((side) => ({
    edge: 'bottom',
    at: (girth + side * stretch) / 2,
    count: 1,
    name: 'visor end',
  }));

/** Room beyond the depth of a folded visor for its two layers of stiffener, its cloth and a hand, mm (our own measure). */
export const TURNING_ROOM = 25;

/** What a hand passes through, whatever is turned, mm: the mean of women's hands is 78 across (ANSUR II, 2012; from memory). */
const HAND = 80;

/** Length of the gap that a hand passes through, and a visor of this depth (0 without one) folded end to end, to the next 5 mm. */
export const turningGap = (visorDepth: number): number =>
  Math.max(HAND, Math.ceil((visorDepth + TURNING_ROOM) / 5) * 5);

/** The gap left open in the upper edge of the lining band, between the wearer's left side and the centre back. */
export const turningGapMark = (girth: number, height: number, gap: number): PieceMark => {
  const middle = (-girth * 3) / 8;
  return {
    kind: 'stretch',
    path: [line(point(middle + gap / 2, height), point(middle - gap / 2, height))],
    name: 'turning gap',
  };
};

/** What the band says of its turning gap. */
export const turningGapNote = (gap: number, visored: boolean): Words =>
  words`Leave ${mm(gap)} of the upper edge open to turn the cap through${visored ? '; the folded visor passes' : ''}.`;
