import { type Point3, point3 } from '../../../geometry/space.ts';
import type { FormStrip } from '../../form.ts';

/** A straight band standing on level 0 below a closed level curve, from the centre back round to it again. */
export const bandStrip = (curve: readonly Point3[], height: number): FormStrip => {
  const at = (z: number) => curve.map((p) => point3(p.x, p.y, z));
  return { piece: 'band', copy: 0, strip: { left: at(height), right: at(0) } };
};
