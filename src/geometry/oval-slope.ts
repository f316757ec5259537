import { type Oval, ovalNormal, ovalPoint } from './oval.ts';
import { type Point3, point3 } from './space.ts';

/**
 * A point off an oval that lies level at height 0: `out` mm along its outward normal, `down` mm below.
 * Points with out : down fixed form a surface of equal slope. Its rulings are the normals, so it is developable, and a
 * curve of curvature κ on the oval has curvature κ · out/√(out² + down²) when rolled flat.
 */
export const offOval = (oval: Oval, angle: number, out: number, down: number): Point3 => {
  const p = ovalPoint(oval, angle);
  const n = ovalNormal(oval, angle);
  return point3(p.x + n.x * out, p.y + n.y * out, -down);
};
