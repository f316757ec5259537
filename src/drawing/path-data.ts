import type { Path } from '../geometry/path.ts';
import { add, heading, type Point, scale } from '../geometry/point.ts';
import { walk } from '../geometry/walk.ts';

/** A path in SVG's own verbs, y down: arcs stay arcs, in halves where they pass a half turn. */
export const pathData = (path: Path): string => {
  const verbs: string[] = [];
  walk(path, {
    moveTo: (p) => verbs.push(`M${xy(p)}`),
    lineTo: (p) => verbs.push(`L${xy(p)}`),
    cubicTo: (a, b, p) => verbs.push(`C${xy(a)} ${xy(b)} ${xy(p)}`),
    arcTo: (centre, r, start, sweep, to) => {
      const half = (end: Point): number =>
        verbs.push(`A${svgNumber(r)} ${svgNumber(r)} 0 0 ${sweep > 0 ? 0 : 1} ${xy(end)}`);
      if (Math.abs(sweep) > 3) half(add(centre, scale(heading(start + sweep / 2), r)));
      half(to);
    },
    close: () => verbs.push('Z'),
  });
  return verbs.join('');
};

/** A thousandth of a millimetre, without a minus before nought. */
export const svgNumber = (n: number): string => `${Number(n.toFixed(3)) + 0}`;
const xy = (p: Point): string => `${svgNumber(p.x)},${svgNumber(-p.y)}`;
