import { circle, line } from '../../../geometry/path.ts';
import { ORIGIN, point } from '../../../geometry/point.ts';
import type { Piece } from '../../../pattern/piece.ts';
import { exactMm, mm, words } from '../../../words.ts';
import type { TopButtonValues } from './parameters.ts';

/** The cloth goes round the button's edge to behind it: common practice is twice the button, less would not hold. */
const CLOTH = 2;

/** The disc of cloth that covers the button on top, and nothing where there is no button. mm. */
export const topButtonPieces = ({ topButton, topButtonDiameter }: TopButtonValues): readonly Piece[] =>
  topButton ? [buttonCover(topButtonDiameter)] : [];

const buttonCover = (diameter: number): Piece => {
  const r = (CLOTH * diameter) / 2;
  return {
    id: 'topButton',
    name: 'Button cover',
    cuts: [{ cloth: 'outer', count: 1 }],
    outline: [{ name: 'edge', path: circle(ORIGIN, r), kind: 'none' }],
    foldable: false,
    grain: [point(0, -r * 0.85), point(0, -r * 0.15)],
    notches: [],
    centreLines: [],
    marks: [],
    labelAt: point(0, r * 0.4),
    dimensions: [{ name: 'Diameter', along: [line(point(-r, 0), point(r, 0))] }],
    figures: [
      {
        name: 'Across the button cover',
        formula: '2 × button diameter',
        worked: words`${String(CLOTH)} × ${exactMm(diameter)} = ${exactMm(2 * r)}`,
      },
    ],
    notions: [{ name: 'Button to cover', size: words`${mm(diameter)} across` }],
    notes: [words`Gather the edge, draw it up over a button ${mm(diameter)} across.`],
  };
};
