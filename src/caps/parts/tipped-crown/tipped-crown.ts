import type { Oval } from '../../../geometry/oval.ts';
import type { Cloth, Figure, Piece, SeamKind } from '../../../pattern/piece.ts';
import type { EdgeUse, Seam } from '../../../pattern/seam.ts';
import type { Words } from '../../../words.ts';
import { one, plain, ring } from '../seams/seam.ts';
import { sideBand } from '../side-band/side-band.ts';
import type { SideBandPieces } from '../side-band/side-band-wish.ts';
import { sideSlope } from '../side-band/side-slope.ts';
import { tip } from '../tip/tip.ts';

export interface TippedCrownWish {
  readonly layer: 'shell' | 'lining';
  readonly cloth: Cloth;
  /** The edge of the top. */
  readonly rim: Oval;
  /** Round what the side band's lower edge is sewn to, mm. */
  readonly openingGirth: number;
  /** What the arithmetic calls that girth; the finished girth where left out. */
  readonly girthName?: string;
  /** Of the side band along the cloth at the sides, mm. At least |rim girth − lower edge| ÷ 2π. */
  readonly height: number;
  readonly pieces: SideBandPieces;
  /** What the lower edge is sewn as; `band` where left out. */
  readonly lower?: SeamKind;
  /** What else is cut to the same outlines. */
  readonly inside?: Cloth | undefined;
  /** Where what is below has seams, in parts of the girth from the centre back. */
  readonly seamsBelow?: readonly number[];
  /** How much higher the rim stands at the front than at the back, mm. */
  readonly tilt?: number;
  /** By what part the lower edge is longer than the opening, and into how many pleats in each quarter that is laid: 0 to gather it. */
  readonly gather?: number;
  readonly pleats?: number;
  /** What the trade calls the two in this cap, where not tip and side band. */
  readonly names?: { readonly tip: string; readonly side: string };
  /** What the tip's arithmetic says of its girth, and what else it says. */
  readonly figures: readonly Figure[];
  readonly notes?: readonly Words[];
}

/** A flat top with a sloped side band, in one layer of cloth. */
export interface TippedCrown {
  readonly pieces: readonly Piece[];
  /** Side seams, then tip to side band. */
  readonly seams: readonly Seam[];
  /** The lower edge all the way round, starting and ending at the centre back. */
  readonly lower: readonly EdgeUse[];
}

const ids = {
  shell: { tip: 'tip', side: 'sideBand', seam: 'side', crown: 'crown' },
  lining: { tip: 'liningTip', side: 'liningSide', seam: 'liningSide', crown: 'liningCrown' },
} as const;

export const tippedCrown = ({
  layer,
  cloth,
  rim,
  openingGirth,
  girthName = 'finished girth',
  height,
  pieces,
  lower = 'band',
  inside,
  seamsBelow = [],
  tilt = 0,
  gather = 0,
  pleats = 0,
  names = { tip: 'Tip', side: 'Side band' },
  figures,
  notes = [],
}: TippedCrownWish): TippedCrown => {
  const id = ids[layer];
  const called = (name: string) => (layer === 'lining' ? `Lining ${name.toLowerCase()}` : name);
  const side = sideBand({
    id: id.side,
    name: called(names.side),
    cloth,
    slope: sideSlope(rim, openingGirth * (1 + gather), height, tilt),
    pieces,
    lower,
    inside,
    seamsBelow,
    girthName,
    gather,
    pleats,
  });
  const top = tip({
    id: id.tip,
    name: called(names.tip),
    cuts: (inside ? [cloth, inside] : [cloth]).map((one) => ({ cloth: one, count: 1 })),
    rim,
    eighths: pieces === '4',
    figures,
    notes,
  });
  return {
    pieces: [top, ...side.pieces],
    seams: [
      ...side.joins.map(({ name: where, a, b }, i) =>
        plain(`${id.seam}${i + 1}`, `${called(names.side)} seam ${i + 1}, ${where}`, 'side', [a], [b]),
      ),
      ring(
        id.crown,
        `${called(names.tip)} to ${names.side.toLowerCase()}`,
        'crown',
        [one(id.tip, 'rim')],
        side.top,
      ),
    ],
    lower: side.bottom,
  };
};
