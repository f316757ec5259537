import type { Notch, Piece } from '../../../pattern/piece.ts';
import { exactMm, words } from '../../../words.ts';
import type { Opening } from '../../opening.ts';
import { layerFigure } from '../girth-figures.ts';
import type { StripGrain } from '../strip-grain.ts';
import { band, TURNING_ROOM, turningGap, turningGapMark, turningGapNote } from './band.ts';

interface InnerBandWish {
  /** Sewn to a lining, or the facing of a cap without one. */
  readonly lined: boolean;
  readonly opening: Opening;
  readonly height: number;
  readonly grain: StripGrain;
  /** On the shell, mm. */
  readonly visorStretch: number;
  readonly visorDepth: number;
  readonly eighths: boolean;
  readonly topNotches?: readonly Omit<Notch, 'edge'>[];
}

/** The band inside the band: of lining with a gap to turn the cap through, or else of the cap's own cloth. */
export const innerBand = ({ lined, visorDepth, opening, ...wish }: InnerBandWish): Piece => {
  const girth = opening.inner;
  const figures = layerFigure(opening, girth, lined ? 'lining' : 'facing');
  const visorStretch = (wish.visorStretch * girth) / opening.shell;
  const shared = {
    ...wish,
    girth,
    visorStretch,
    ...(girth === opening.shell
      ? {}
      : { visorFormula: 'as much of this band as the visor takes of the outer one ÷ 2' }),
    id: 'liningBand',
    top: 'band',
  } as const;
  if (!lined) {
    return band({
      ...shared,
      name: 'Band facing',
      cuts: [{ cloth: 'outer', count: 1 }],
      figures,
      notes: [words`The upper edge is neatened and caught down by hand over the band seam.`],
    });
  }
  const gap = turningGap(visorDepth);
  const visored = visorDepth > 0;
  return band({
    ...shared,
    name: 'Lining band',
    cuts: [{ cloth: 'lining', count: 1 }],
    marks: [turningGapMark(girth, wish.height, gap)],
    figures: [
      ...figures,
      ...(visored
        ? [
            {
              name: 'Turning gap',
              formula: 'visor depth + room to turn it, rounded up; a hand’s breadth at least',
              worked: words`${exactMm(visorDepth)} + ${exactMm(TURNING_ROOM)} = ${exactMm(visorDepth + TURNING_ROOM)}, up to ${exactMm(gap)}`,
            },
          ]
        : []),
    ],
    notes: [turningGapNote(gap, visored)],
  });
};
