import { type TriangleStrip, triangleAreas } from '../../src/geometry/triangle-strip.ts';

/** Area of all triangles, mm². */
export const stripArea = (strip: TriangleStrip): number =>
  triangleAreas(strip).reduce((sum, area) => sum + area, 0);
