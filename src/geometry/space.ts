/** A point in space: millimetres, x to the wearer's right, y to the front, z up. */
export interface Point3 {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

export const point3 = (x: number, y: number, z: number): Point3 => ({ x, y, z });
export const distance3 = (p: Point3, q: Point3): number => Math.hypot(p.x - q.x, p.y - q.y, p.z - q.z);
