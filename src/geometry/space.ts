/** A point or a vector in space: millimetres, x to the wearer's right, y to the front, z up. */
export interface Point3 {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export const point3 = (x: number, y: number, z: number): Point3 => ({ x, y, z });
export const distance3 = (p: Point3, q: Point3): number => norm3(subtract3(p, q));

export const subtract3 = (p: Point3, q: Point3): Point3 => point3(p.x - q.x, p.y - q.y, p.z - q.z);
export const scale3 = (p: Point3, k: number): Point3 => point3(p.x * k, p.y * k, p.z * k);
/** The point a fraction t of the way from p to q. */
export const between3 = (p: Point3, q: Point3, t: number): Point3 =>
  point3(p.x + (q.x - p.x) * t, p.y + (q.y - p.y) * t, p.z + (q.z - p.z) * t);
export const dot3 = (p: Point3, q: Point3): number => p.x * q.x + p.y * q.y + p.z * q.z;
/** The right-handed normal of p and q, as long as the parallelogram between them is large. */
export const cross3 = (p: Point3, q: Point3): Point3 =>
  point3(p.y * q.z - p.z * q.y, p.z * q.x - p.x * q.z, p.x * q.y - p.y * q.x);
/** Length of a vector. A plain root, for the same reason as in the plane. */
export const norm3 = (p: Point3): number => Math.sqrt(p.x * p.x + p.y * p.y + p.z * p.z);
