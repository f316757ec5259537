import { ovalOfGirth } from '../../geometry/oval.ts';
import { offOval } from '../../geometry/oval-slope.ts';
import { type Point3, point3 } from '../../geometry/space.ts';
import type { Form, FormStrip } from '../form.ts';
import { bandStrip } from '../parts/band/form.ts';
import { goreCopies, goreLowerEdge, goreStrips } from '../parts/gore/form.ts';
import { sideBandScheme } from '../parts/side-band/side-band-wish.ts';
import { dropOf, sideSlope } from '../parts/side-band/side-slope.ts';
import { sideBandStrips, tipStrip } from '../parts/tipped-crown/form.ts';
import type { Head } from '../style.ts';
import { type BeretMeasures, beretMeasures } from './measures.ts';
import type { BeretValues } from './parameters.ts';
import { tamReach } from './tam-reach.ts';

/** A beret in space: its crown as it is held up round, and its band. */
export const beretForm = (values: BeretValues, head: Head): Form => ({
  strips: beretStrips(values, beretMeasures(values, head)),
});

/** One layer of a beret, of its own measures. */
export const beretStrips = (values: BeretValues, measures: BeretMeasures): readonly FormStrip[] =>
  forms[values.beretCrown](values, measures);

type Maker = (values: BeretValues, measures: BeretMeasures) => readonly FormStrip[];

const disc: Maker = ({ underPieces, bandHeight }, { rimGirth, openingGirth, underWidth }) => {
  const rim = ovalOfGirth(rimGirth, 1);
  const slope = sideSlope(rim, openingGirth, underWidth);
  const top = bandHeight + dropOf(slope);
  return [
    { piece: 'tip', copy: 0, strip: tipStrip(rim, top) },
    ...sideBandStrips(slope, sideBandScheme(underPieces, 0, 0), top),
    bandStrip(circleOf(openingGirth, 0), bandHeight),
  ];
};

const gored: Maker = ({ gores, frontSeam, bandHeight }, measures) => {
  const crown = { gores, frontSeam, reach: tamReach(measures, gores) };
  return [...goreStrips(crown, goreCopies(gores), bandHeight), bandStrip(goreLowerEdge(crown), bandHeight)];
};

/** A gathered disc puffs out and falls over: so much of the spread outwards, and so much up (our own measure, for the picture alone). */
const [PUFF_OUT, PUFF_UP] = [0.4, 0.45];

const gathered: Maker = ({ bandHeight }, { openingGirth, rimGirth }) => {
  const spread = (rimGirth - openingGirth) / (2 * Math.PI);
  const edge = openingGirth + 2 * Math.PI * PUFF_OUT * spread;
  const top = bandHeight + PUFF_UP * spread;
  return [
    { piece: 'tip', copy: 0, strip: tipStrip(ovalOfGirth(edge, 1), top), likeness: true },
    {
      piece: 'tip',
      copy: 0,
      strip: { left: circleOf(edge, top), right: circleOf(openingGirth, bandHeight) },
      likeness: true,
    },
    bandStrip(circleOf(openingGirth, 0), bandHeight),
  ];
};

const forms: Readonly<Record<BeretValues['beretCrown'], Maker>> = { disc, gored, gathered };

const ROUND_STEPS = 256;

/** A level circle of some girth and height, mm, from the centre back round to it again. */
const circleOf = (girth: number, height: number): readonly Point3[] => {
  const circle = ovalOfGirth(girth, 1);
  return Array.from({ length: ROUND_STEPS + 1 }, (_, i) => {
    const { x, y } = offOval(circle, -Math.PI / 2 + (i * 2 * Math.PI) / ROUND_STEPS, 0, 0);
    return point3(x, y, height);
  });
};
