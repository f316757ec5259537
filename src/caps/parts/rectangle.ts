import { line, type Path } from '../../geometry/path.ts';
import { point } from '../../geometry/point.ts';

/** The four edges of an upright rectangle about x = 0, standing on y = 0, counter-clockwise from the bottom left. */
export const rectangle = (
  width: number,
  height: number,
): Readonly<Record<'bottom' | 'right' | 'top' | 'left', Path>> => {
  const x = width / 2;
  const [a, b, c, d] = [point(-x, 0), point(x, 0), point(x, height), point(-x, height)];
  return { bottom: [line(a, b)], right: [line(b, c)], top: [line(c, d)], left: [line(d, a)] };
};
