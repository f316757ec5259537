import type { Oval } from '../../../geometry/oval.ts';
import type { Cloth, Figure, Piece } from '../../../pattern/piece.ts';
import type { EdgeUse, Seam } from '../../../pattern/seam.ts';
import { one, plain, ring } from '../seams/seam.ts';
import { sideBand } from '../side-band/side-band.ts';
import { sideSlope } from '../side-band/side-band-shape.ts';
import { tip } from '../tip/tip.ts';

export interface TippedCrownWish {
  readonly layer: 'shell' | 'lining';
  readonly cloth: Cloth;
  /** The edge of the top. */
  readonly rim: Oval;
  /** Round the side band's lower edge, mm. */
  readonly openingGirth: number;
  /** Of the side band along the cloth, mm. Above |rim girth − opening girth| ÷ 2π. */
  readonly height: number;
  readonly pieces: '2' | '4';
  /** What the tip's arithmetic says of its girth. */
  readonly figures: readonly Figure[];
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
const names = {
  shell: { tip: 'Tip', side: 'Side band', crown: 'Tip to side band' },
  lining: { tip: 'Lining tip', side: 'Lining side band', crown: 'Lining tip to side band' },
} as const;

export const tippedCrown = ({
  layer,
  cloth,
  rim,
  openingGirth,
  height,
  pieces,
  figures,
}: TippedCrownWish): TippedCrown => {
  const [id, name] = [ids[layer], names[layer]];
  const side = sideBand({
    id: id.side,
    name: name.side,
    cloth,
    slope: sideSlope(rim, openingGirth, height),
    pieces,
  });
  const top = tip({
    id: id.tip,
    name: name.tip,
    cuts: [{ cloth, count: 1 }],
    rim,
    eighths: pieces === '4',
    figures,
  });
  return {
    pieces: [top, ...side.pieces],
    seams: [
      ...side.joins.map(({ name: where, a, b }, i) =>
        plain(`${id.seam}${i + 1}`, `${name.side} seam ${i + 1}, ${where}`, 'side', [a], [b]),
      ),
      ring(id.crown, name.crown, 'crown', [one(id.tip, 'rim')], side.top),
    ],
    lower: side.bottom,
  };
};
