import { pathLength, pointAt } from '../../../geometry/measure.ts';
import { line } from '../../../geometry/path.ts';
import { add, between, point } from '../../../geometry/point.ts';
import type { Notch, Piece } from '../../../pattern/piece.ts';
import type { LayerWish } from './layer-wish.ts';
import type { OpeningCurve } from './opening-curve.ts';
import { SEAM_NOTCHES } from './seam-notches.ts';
import { sideDepth } from './side-depth.ts';

/** The side of the wearer's right, front to the right; the other is its mirror image. */
export const sidePiece = (wish: LayerWish, id: string, name: string): Piece => {
  const { lower, seam } = wish.shape.side;
  const depth = sideDepth(wish.shape);
  const middle = between(depth.from, depth.to, 0.5);
  const reach = pathLength(lower) * 0.16;
  return {
    id,
    name,
    cuts: [{ cloth: wish.cloth, count: 2, mirrored: 1 }],
    outline: [
      { name: 'lower', path: lower, kind: 'lower' },
      { name: 'seam', path: seam, kind: 'gore' },
    ],
    foldable: false,
    grain: [point(middle.x - reach, middle.y * 0.7), point(middle.x + reach, middle.y * 0.7)],
    notches: [...seamNotches(pathLength(seam)), ...edgeNotches(wish.opening, wish.visorStretch)],
    centreLines: [],
    marks: frontAndBack(wish),
    labelAt: add(between(depth.from, depth.to, 0.57), point(-reach * 1.25, 0)),
    dimensions: [
      { name: 'Depth', along: [line(depth.from, depth.to)] },
      { name: 'Lower edge', along: lower },
      { name: 'Seam', along: seam },
    ],
    figures: wish.sideFigures ?? [],
    notes: wish.sideNotes ?? [],
  };
};

/** Which end is which: the piece lies either way up. */
const frontAndBack = ({ shape: { side } }: LayerWish): Piece['marks'] => {
  const word = (text: string, share: number) => {
    const [low, high] = [
      pointAt(side.lower, pathLength(side.lower) * share),
      pointAt(side.seam, pathLength(side.seam) * (1 - share)),
    ];
    return { kind: 'text', text, at: between(low, high, 0.35) } as const;
  };
  return [word('back', 0.1), word('front', 0.88)];
};

const seamNotches = (length: number): readonly Notch[] =>
  SEAM_NOTCHES.map(({ share, count, name }) => ({ edge: 'seam', at: length * share, count, name }));

const edgeNotches = (
  { frontLength, backLength, sideLength }: OpeningCurve,
  visorStretch: number,
): readonly Notch[] => {
  const girth = frontLength + backLength + 2 * sideLength;
  return [
    { edge: 'lower', at: girth / 4 - backLength / 2, count: 1, name: 'side' },
    ...(visorStretch > frontLength
      ? [
          {
            edge: 'lower',
            at: sideLength - (visorStretch - frontLength) / 2,
            count: 1,
            name: 'visor end',
          } as const,
        ]
      : []),
  ];
};
