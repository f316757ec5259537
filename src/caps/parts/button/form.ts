import { type Point3, point3 } from '../../../geometry/space.ts';
import type { FormStrip } from '../../form.ts';
import type { TopButtonValues } from './parameters.ts';

const STEPS = 24;
/** A covered button is about a third as high as it is wide (our own measure, for the picture alone). */
const RISE = 1 / 3;

/** The covered button on the middle of a crown, at some height (mm): a shallow cone, and nothing where there is none. */
export const topButtonStrips = (
  { topButton, topButtonDiameter }: TopButtonValues,
  level: number,
): readonly FormStrip[] => {
  if (!topButton) return [];
  const r = topButtonDiameter / 2;
  const edge = Array.from({ length: STEPS + 1 }, (_, i): Point3 => {
    const angle = -Math.PI / 2 + (i * 2 * Math.PI) / STEPS;
    return point3(r * Math.cos(angle), r * Math.sin(angle), level);
  });
  const top = edge.map(() => point3(0, 0, level + 2 * r * RISE));
  return [{ piece: 'topButton', copy: 0, strip: { left: top, right: edge }, likeness: true }];
};
