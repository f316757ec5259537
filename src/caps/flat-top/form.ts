import { type Oval, ovalOfGirth } from '../../geometry/oval.ts';
import { offOval } from '../../geometry/oval-slope.ts';
import type { Form, FormStrip } from '../form.ts';
import { openingOf } from '../opening.ts';
import { bandStrip } from '../parts/band/form.ts';
import { pleatCount } from '../parts/side-band/parameters.ts';
import { sideBandScheme } from '../parts/side-band/side-band-wish.ts';
import { dropOf, reachOf, sideSlope } from '../parts/side-band/side-slope.ts';
import { sideBandStrips, tipStrip } from '../parts/tipped-crown/form.ts';
import { visorStrips } from '../parts/visor/form.ts';
import { visorParts } from '../parts/visor/visor-parts.ts';
import type { Head } from '../style.ts';
import type { FlatTopValues } from './parameters.ts';

const ROUND_STEPS = 256;

/** A flat-top cap in space: tip, side band, band and visor. */
export const flatTopForm = (values: FlatTopValues, head: Head): Form => {
  const opening = { ...head, girth: openingOf(head, values.ease).shell };
  const rim = ovalOfGirth(opening.girth + values.crownFullness, values.tipRatio);
  const crown = crownOnBand(values, rim, opening.girth);
  const front = crown.at(-1)!.strip.right[ROUND_STEPS / 2]!.y;
  return { strips: [...crown, ...visorStrips(values, visorParts(values, opening), opening, front)] };
};

/** Tip, side band and, last, band of one layer of cloth; the band's lower edge is at the front half-way round. */
export const crownOnBand = (values: FlatTopValues, rim: Oval, openingGirth: number): readonly FormStrip[] => {
  const slope = sideSlope(rim, openingGirth, values.sideBandHeight, values.crownTilt);
  const top = values.bandHeight + dropOf(slope);
  const scheme = sideBandScheme(values.sideBandPieces, values.crownTilt, pleatCount(values));
  const side = sideBandStrips(slope, scheme, top);
  const lower = Array.from({ length: ROUND_STEPS + 1 }, (_, i) =>
    offOval(slope.plan, -Math.PI / 2 + (i * 2 * Math.PI) / ROUND_STEPS, -reachOf(slope), 0),
  );
  return [
    { piece: 'tip', copy: 0, strip: tipStrip(rim, top, values.crownTilt) },
    // Gathered, it stands as if it were cut to the band: the cloth between its seams is more than that.
    ...(values.crownGather === 0 ? side : side.map((one) => ({ ...one, likeness: true as const }))),
    bandStrip(lower, values.bandHeight),
  ];
};
