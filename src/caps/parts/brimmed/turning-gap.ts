import { pathLength, stretch } from '../../../geometry/measure.ts';
import type { Piece } from '../../../pattern/piece.ts';
import { mm, words } from '../../../words.ts';
import type { TippedCrown } from '../tipped-crown/tipped-crown.ts';

/** A hand and a folded brim go through, mm (our own measure); and no more than this part of a quarter of the seam. */
const GAP = 110;
const OF_QUARTER = 0.75;

/** Pieces of a lining's side that reach from the side towards the centre back, and how much of the way round each goes. */
const SIDES: Readonly<Record<string, number>> = { liningSide: 1, liningSideBack: 1 / 2 };

/** A tipped lining with a gap marked in the upper edge of its side, towards the back, to turn the hat through. */
export const withTurningGap = (lining: TippedCrown): TippedCrown => ({
  ...lining,
  pieces: lining.pieces.map((piece) => (piece.id in SIDES ? gapped(piece) : piece)),
});

const gapped = (piece: Piece): Piece => {
  const copies = piece.cuts[0]!.count;
  const top = piece.outline.find(({ name }) => name === 'top')!.path;
  const length = pathLength(top);
  const quarter = copies > 1 ? length : (length / SIDES[piece.id]!) * (1 / 4);
  const gap = Math.floor(Math.min(GAP, OF_QUARTER * quarter) / 5) * 5;
  // In the middle of the quarter that lies at the end of the edge, or the only one.
  const middle = quarter / 2;
  return {
    ...piece,
    marks: [
      ...piece.marks,
      { kind: 'stretch', path: stretch(top, middle - gap / 2, middle + gap / 2), name: 'turning gap' },
    ],
    notes: [
      ...piece.notes,
      copies > 1
        ? words`Leave ${mm(gap)} of one upper edge open to turn the hat through.`
        : words`Leave ${mm(gap)} of the upper edge open to turn the hat through.`,
    ],
  };
};
