import { arc, line } from '../../../geometry/path.ts';
import { point } from '../../../geometry/point.ts';
import type { Piece, PieceMark } from '../../../pattern/piece.ts';
import { exactMm, mm, words } from '../../../words.ts';

export interface StrapWish {
  /** The stretch of band that the visor takes, mm. */
  readonly visorStretch: number;
  readonly width: number;
  readonly buttonDiameter: number;
  readonly buttonThickness: number;
}

/** Clear space between a button and the end of the visor, and between strap and buttons and the lower edge of the band, mm. */
const BUTTON_GAP = 3;
const STRAP_LIFT = 2;
/** Room that the strap, and a button that is larger, needs above and below itself on the band. */
export const STRAP_ROOM = 2 * STRAP_LIFT;

/** Along the long edge, left open to turn the strap, mm. */
const STRAP_GAP = 40;

const buttonholeLength = ({ buttonDiameter, buttonThickness }: StrapWish): number =>
  buttonDiameter + buttonThickness;

/** From one button's centre to the other's, along the band. */
const buttonSpan = ({ visorStretch, buttonDiameter }: StrapWish): number =>
  visorStretch + buttonDiameter + 2 * BUTTON_GAP;

/** Where the buttons go on a band with its centre front on x = 0: in the middle of the strap, which lies higher where they are broader than it. */
export const buttonMarks = (wish: StrapWish): readonly PieceMark[] =>
  [-1, 1].map((side) => ({
    kind: 'button',
    at: point((side * buttonSpan(wish)) / 2, STRAP_LIFT + Math.max(wish.width, wish.buttonDiameter) / 2),
    diameter: wish.buttonDiameter,
    name: 'button',
  }));

/** The strap: straight edges, round ends, a buttonhole lengthwise at either end. */
export const strap = (wish: StrapWish): Piece => {
  const { width } = wish;
  const span = buttonSpan(wish);
  const hole = buttonholeLength(wish);
  const length = span + hole + width;
  const [x, r] = [length / 2 - width / 2, width / 2];
  const buttonhole = (side: -1 | 1): PieceMark => ({
    kind: 'buttonhole',
    from: point((side * (span - hole)) / 2, r),
    to: point((side * (span + hole)) / 2, r),
    name: 'buttonhole',
  });
  const [a, b, c, d] = [point(-x, 0), point(x, 0), point(x, width), point(-x, width)] as const;
  return {
    id: 'strap',
    name: 'Strap',
    cuts: [{ cloth: 'outer', count: 2 }],
    outline: [
      { name: 'bottom', path: [line(a, b)], kind: 'strapEdge' },
      { name: 'right', path: [arc(point(x, r), b, Math.PI)], kind: 'strapEdge' },
      { name: 'top', path: [line(c, d)], kind: 'strapEdge' },
      { name: 'left', path: [arc(point(-x, r), d, Math.PI)], kind: 'strapEdge' },
    ],
    foldable: true,
    grain: [point(length * 0.04, r), point(length * 0.14, r)],
    notches: [],
    centreLines: [[line(point(0, 0), point(0, width))]],
    marks: [
      buttonhole(-1),
      buttonhole(1),
      {
        kind: 'stretch',
        path: [line(point(STRAP_GAP / 2, width), point(-STRAP_GAP / 2, width))],
        name: 'turning gap',
      },
    ],
    labelAt: point(length * 0.27, r),
    dimensions: [
      { name: 'Length', along: [line(point(-length / 2, r), point(length / 2, r))] },
      { name: 'Width', along: [line(point(x, 0), point(x, width))] },
    ],
    figures: [
      {
        name: 'From button to button',
        formula: 'visor inner edge + button diameter + a little clear at each side',
        worked: words`${exactMm(wish.visorStretch)} + ${exactMm(wish.buttonDiameter)} + 2 × ${exactMm(BUTTON_GAP)} = ${exactMm(span)}`,
      },
      {
        name: 'Buttonhole',
        formula: 'button diameter + thickness',
        worked: words`${exactMm(wish.buttonDiameter)} + ${exactMm(wish.buttonThickness)} = ${exactMm(hole)}`,
      },
      {
        name: 'Strap length',
        formula: 'button to button + buttonhole + strap width',
        worked: words`${exactMm(span)} + ${exactMm(hole)} + ${exactMm(width)} = ${exactMm(length)}`,
      },
    ],
    notions: [{ name: 'Buttons', size: words`2, ${mm(wish.buttonDiameter)} across` }],
    notes: [words`Leave ${mm(STRAP_GAP)} of one long edge open to turn it.`],
  };
};
