import { ovalOfGirth } from '../../../geometry/oval.ts';
import { point3 } from '../../../geometry/space.ts';
import type { FormStrip } from '../../form.ts';
import type { Head } from '../../style.ts';
import { type VisorValues, visorParameters } from './parameters.ts';
import type { VisorParts } from './visor-parts.ts';
import { visorSheet } from './visor-shape.ts';
import { upperWish } from './visor-turn.ts';

/** What nothing says of a bought insert is as usual in a drafted visor. */
const usual = {
  drop: visorParameters.visorDrop.default,
  fullness: visorParameters.visorFullness.default,
  tipRounding: visorParameters.visorTipRounding.default,
};

/**
 * The visor's upper cover as it stands: its inner edge level at 0 along the front of the head's oval, the middle of it on
 * the front of the cap (mm forward of the axis). A bought insert is shown as a visor of its length, depth and slope.
 */
export const visorStrips = (
  values: VisorValues,
  { stretch, depth, turn, insert, pieces }: VisorParts,
  opening: Head,
  front: number,
): readonly FormStrip[] => {
  if (pieces.length === 0) return [];
  const oval = ovalOfGirth(opening.girth, opening.ratio);
  const under = {
    opening: oval,
    innerEdge: stretch,
    depth,
    ...(insert
      ? { ...usual, drop: insert.drop ?? usual.drop }
      : {
          drop: values.visorDrop,
          fullness: values.visorFullness,
          tipRounding: values.visorTipRounding,
        }),
  };
  const { left, right } = visorSheet(upperWish(under, turn));
  const moved = (rail: typeof left) => rail.map((p) => point3(p.x, p.y + front - oval.halfLength, p.z));
  return [
    {
      piece: 'visor',
      copy: 0,
      strip: { left: moved(left), right: moved(right) },
      open: true,
      ...(insert ? { likeness: true } : {}),
    },
  ];
};
