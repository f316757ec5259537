import type { SeamKind } from '../../pattern/piece.ts';
import type { EdgeUse, Seam } from '../../pattern/seam.ts';
import type { SideBand } from '../parts/side-band.ts';

interface SeamsWish {
  readonly shellSide: SideBand;
  /** Null where only the band is faced. */
  readonly liningSide: SideBand | null;
  readonly strap: boolean;
  readonly girth: number;
  readonly visorStretch: number;
}

/** Every seam of a flat-top cap, in sewing order. */
export const flatTopSeams = ({
  shellSide,
  liningSide,
  strap,
  girth,
  visorStretch,
}: SeamsWish): readonly Seam[] => [
  plain('visorEdge', 'Visor outer edge', 'visorEdge', [one('visor', 'outer')], [one('visor', 'outer', 1)]),
  ...(strap ? [strapSeam()] : []),
  ...crownSeams('', 'Tip to side band', shellSide, { tip: 'tip', band: 'band' }),
  plain(
    'visorToBand',
    'Visor to band',
    'lower',
    [one('visor', 'inner')],
    [visorStretchOf(girth, visorStretch)],
  ),
  ...(liningSide
    ? crownSeams('lining', 'Lining tip to side band', liningSide, { tip: 'liningTip', band: 'liningBand' })
    : [backSeam('liningBack', 'Facing back seam', 'liningBand')]),
  ring(
    'lowerEdge',
    liningSide ? 'Band to lining band, lower edge' : 'Band to facing, lower edge',
    'lower',
    [one('band', 'bottom')],
    [one('liningBand', 'bottom')],
  ),
];

/** Side seams, tip, back seam and band of the shell or of the lining. */
const crownSeams = (
  layer: '' | 'lining',
  crownName: string,
  side: SideBand,
  ids: { readonly tip: string; readonly band: string },
): readonly Seam[] => {
  const id = (name: string) => (layer ? `${layer}${name[0]!.toUpperCase()}${name.slice(1)}` : name);
  const word = layer ? 'Lining side band' : 'Side band';
  return [
    ...side.joins.map(({ name, a, b }, i) =>
      plain(id(`side${i + 1}`), `${word} seam ${i + 1}, ${name}`, 'side', [a], [b]),
    ),
    ring(id('crown'), crownName, 'crown', [one(ids.tip, 'rim')], side.top),
    backSeam(id('back'), layer ? 'Lining band back seam' : 'Band back seam', ids.band),
    ring(id('bandToSide'), `${word} to band`, 'band', side.bottom, [
      { piece: ids.band, copy: 0, edge: 'top', backwards: true },
    ]),
  ];
};

const one = (piece: string, edge: string, copy = 0): EdgeUse => ({ piece, copy, edge });

const visorStretchOf = (girth: number, stretch: number): EdgeUse => ({
  ...one('band', 'bottom'),
  from: (girth - stretch) / 2,
  to: (girth + stretch) / 2,
});

const backSeam = (id: string, name: string, piece: string): Seam =>
  plain(id, name, 'side', [one(piece, 'right')], [{ ...one(piece, 'left'), backwards: true }]);

const STRAP_EDGES = ['bottom', 'right', 'top', 'left'];
const strapSeam = (): Seam =>
  ring(
    'strapEdge',
    'Strap edge',
    'strapEdge',
    STRAP_EDGES.map((edge) => one('strap', edge)),
    STRAP_EDGES.map((edge) => one('strap', edge, 1)),
  );

const plain = (
  id: string,
  name: string,
  kind: SeamKind,
  a: readonly EdgeUse[],
  b: readonly EdgeUse[],
): Seam => ({ id, name, kind, a, b, ease: 0 });

const ring = (...seam: Parameters<typeof plain>): Seam => ({ ...plain(...seam), ring: true });
