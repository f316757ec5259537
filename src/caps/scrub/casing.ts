import { line } from '../../geometry/path.ts';
import { point } from '../../geometry/point.ts';
import { notchesToMeet, type Side } from '../../pattern/chain.ts';
import type { Figure, Piece, PieceMark } from '../../pattern/piece.ts';
import type { EdgeUse } from '../../pattern/seam.ts';
import { exactMm, mm, ratio, words } from '../../words.ts';
import { rectangle } from '../parts/rectangle.ts';
import { one } from '../parts/seams/seam.ts';
import { stripGrain } from '../parts/strip-grain.ts';
import type { ScrubValues } from './parameters.ts';

/** The part of the girth, about the centre back, that is drawn in. */
const DRAWN_IN = 0.4;

/** What runs in a casing is so much narrower, mm: room for the stitches along its free edge, and to slide. */
export const CASING_ROOM = 4;

/** Along the lower edge, mm: the stretch that elastic or ties draw in. */
export const drawnIn = (girth: number): number => girth * DRAWN_IN;

/** The strip inside the lower edge, sewn to a side (from the centre back round to it again), turned in and stitched down. */
export const casing = (meets: Side, values: ScrubValues): Piece => {
  const { length } = meets;
  const { casingHeight: height, casingGrain, backTie } = values;
  const { bottom, right, top, left } = rectangle(length, height);
  const ends = backTie === 'ties' ? 'hem' : 'side';
  return {
    id: 'casing',
    name: 'Casing',
    cuts: [{ cloth: 'outer', count: 1 }],
    outline: [
      { name: 'bottom', path: bottom, kind: 'lower' },
      { name: 'right', path: right, kind: ends },
      { name: 'top', path: top, kind: 'hem' },
      { name: 'left', path: left, kind: ends },
    ],
    foldable: true,
    ...stripGrain(length, height, casingGrain, 'casingGrain'),
    notches: notchesToMeet('bottom', meets),
    centreLines: [[line(point(0, 0), point(0, height))]],
    marks: backMarks(length, height, backTie === 'ties' ? 'tie' : 'elastic'),
    labelAt: point(-length * 0.17, height / 2),
    dimensions: [
      { name: 'Length', along: bottom },
      { name: 'Height', along: right },
    ],
    figures: [stretchFigure(length), ...(backTie === 'ties' ? [] : [elasticFigure(length, values)])],
    notions:
      backTie === 'ties'
        ? []
        : [
            {
              name: 'Elastic',
              size: words`${mm(values.elasticLength)} long, ${mm(height - CASING_ROOM)} wide`,
            },
          ],
    notes:
      backTie === 'ties'
        ? [
            words`The short ends are hemmed; the ties come out between them.`,
            words`Sew each tie’s end down inside, ${mm(drawnIn(length) / 2)} from the centre back.`,
          ]
        : [
            words`Draw ${mm(values.elasticLength)} of elastic through the marked back; stitch across its ends.`,
          ],
  };
};

/** On each hand, along the upper edge from the short end: what lies inside. */
const backMarks = (length: number, height: number, name: string): readonly PieceMark[] => {
  const [end, inner] = [length / 2, length / 2 - drawnIn(length) / 2];
  const stretch = (from: number, to: number): PieceMark => ({
    kind: 'stretch',
    path: [line(point(from, height), point(to, height))],
    name,
  });
  return [stretch(end, inner), stretch(-inner, -end)];
};

const stretchFigure = (length: number): Figure => ({
  name: 'Drawn in behind',
  formula: 'length of the casing × 40 %',
  worked: words`${exactMm(length)} × ${ratio(DRAWN_IN)} = ${exactMm(drawnIn(length))}`,
});

export const elasticFigure = (length: number, { elasticLength }: ScrubValues): Figure => ({
  name: 'Girth when the elastic rests',
  formula: 'length of the casing − what is drawn in + elastic',
  worked: words`${exactMm(length)} − ${exactMm(drawnIn(length))} + ${exactMm(elasticLength)} = ${exactMm(restingGirth(length, elasticLength))}`,
});

/** Round the lower edge while nothing stretches the elastic, mm. */
export const restingGirth = (girth: number, elasticLength: number): number =>
  girth - drawnIn(girth) + elasticLength;

/** The casing's edge that is sewn, from the centre back round to it again. */
export const casingEdge: EdgeUse = one('casing', 'bottom');
