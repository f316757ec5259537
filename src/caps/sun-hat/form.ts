import { type Oval, ovalOfGirth } from '../../geometry/oval.ts';
import { pathStart } from '../../geometry/path.ts';
import { type Point3, point3 } from '../../geometry/space.ts';
import type { Form, FormStrip } from '../form.ts';
import { openingOf } from '../opening.ts';
import { brimStrips } from '../parts/brim/form.ts';
import { brimRatio } from '../parts/brimmed/brim-ratio.ts';
import { brimOnCrown } from '../parts/brimmed/brimmed.ts';
import { goreCopies, goreHeight, goreStrips } from '../parts/gore/form.ts';
import { shellReach } from '../parts/gore/gore-layers.ts';
import type { GoreReach } from '../parts/gore/gore-reach.ts';
import { narrowingStrips } from '../parts/tipped-crown/narrowing-layers.ts';
import type { Head } from '../style.ts';
import { sunHatCrown } from './crown.ts';
import type { SunHatValues } from './parameters.ts';

/** A sun hat in space: its crown and the upper brim. */
export const sunHatForm = (values: SunHatValues, head: Head): Form => {
  const { shell, opening } = sunHatCrown({ ...values, lining: false }, head);
  const { slope, places } = brimOnCrown(values, opening, shell);
  const ratio = brimRatio(values, head);
  const crown =
    values.crown === 'gored'
      ? goresOn(ovalOfGirth(openingOf(head, values.ease).shell, ratio), values, shellReach(values, head, 0))
      : narrowingStrips(values, head, ratio);
  return { strips: [...crown, ...brimStrips(slope, places)] };
};

/**
 * The gores with their lower edge drawn out to lie about the opening, and less so the higher up: a polygon of gores is
 * held to the brim's curve by the seam between them, which flat cloth in straight rulings can only be likened to.
 */
export const goresOn = (
  { halfLength, halfBreadth }: Oval,
  values: SunHatValues,
  reach: GoreReach,
): readonly FormStrip[] => {
  const [apothem, top] = [pathStart(reach).x, goreHeight(reach)];
  const drawn = ({ x, y, z }: Point3): Point3 => {
    const share = 1 - z / top;
    return point3(
      x * (1 + (halfBreadth / apothem - 1) * share),
      y * (1 + (halfLength / apothem - 1) * share),
      z,
    );
  };
  return goreStrips({ ...values, reach }, goreCopies(values.gores), 0).map(({ strip, ...one }) => ({
    ...one,
    strip: { left: strip.left.map(drawn), right: strip.right.map(drawn) },
    likeness: true,
  }));
};
