import type { LineRole, Mark } from '../../drawing/drawing.ts';
import type { WornDrawing, WornRole } from '../../drawing/worn-drawing.ts';
import { boxHeight, boxWidth } from '../../geometry/box.ts';
import { line } from '../../geometry/path.ts';
import { distance, type Point, point } from '../../geometry/point.ts';
import type { Region } from './size.ts';

/** The cap on its head, small, in the middle of a free region. */
export const pictureIn = ({ box, lines }: WornDrawing, region: Region): readonly Mark[] => {
  const scale = Math.min(region.width / boxWidth(box), region.height / boxHeight(box));
  if (!(scale > 0 && Number.isFinite(scale))) return [];
  const left = region.left + (region.width - scale * boxWidth(box)) / 2;
  const top = region.top - (region.height - scale * boxHeight(box)) / 2;
  const placed = ({ x, y }: Point): Point =>
    point(left + (x - box.min.x) * scale, top - (box.max.y - y) * scale);
  let shaded: Point | null = null;
  return lines.flatMap(({ role, points }): readonly Mark[] => {
    const kept = thinned(points.map(placed));
    if (role === 'shade') {
      // Small, lines of shade must not run together.
      const middle = kept[kept.length >> 1]!;
      if (shaded && distance(middle, shaded) < APART) return [];
      shaded = middle;
    }
    const path = kept.slice(1).map((p, i) => line(kept[i]!, p));
    return path.length === 0 ? [] : [{ kind: 'line', role: roles[role], path }];
  });
};

/** Edges as marks are drawn, the shade and the head with the thinnest line there is. */
const roles: Readonly<Record<WornRole, LineRole>> = { edge: 'mark', shade: 'dimension', head: 'dimension' };

/** Lines of shade are at least so far apart on paper, mm. */
const APART = 0.8;

/** Points nearer to each other than this on paper (mm) are one. */
const FINE = 0.25;

const thinned = (points: readonly Point[]): readonly Point[] =>
  points.filter((p, i) => {
    if (i === 0 || i === points.length - 1) return true;
    return distance(p, points[i - 1]!) >= FINE || i % 3 === 0;
  });
