import type { Form, FormStrip } from '../../caps/form.ts';
import { boundsOf } from '../../geometry/bounds.ts';
import { boxUnion } from '../../geometry/box.ts';
import { polygon } from '../../geometry/path.ts';
import { point, scale } from '../../geometry/point.ts';
import { scaled, translated } from '../../geometry/transform.ts';
import type { LineMark } from '../drawing.ts';
import { formPatches } from '../form-picture.ts';
import { lineMark, movedMarks } from './moved-mark.ts';
import type { Picture } from './shown.ts';
import type { Size } from './size.ts';

/** As the steps name copies. */
export const nameOfCopy = ({ piece, copy }: FormStrip): string => `${piece} ${copy}`;

/** What stands of the cap by now, as it is seen from in front and above: what is new in heavy lines. Null where nothing does. */
export const soFar = (
  form: Form,
  joined: readonly string[],
  news: readonly string[],
  room: Size,
): Picture | null => {
  const strips = form.strips.filter((strip) => joined.includes(nameOfCopy(strip)));
  if (strips.length === 0) return null;
  const patches = formPatches({ strips });
  const outlines = patches.map(({ outline, of }) => ({ path: polygon(outline), of: nameOfCopy(of) }));
  // As large as the whole cap allows, so that it grows where it stands.
  const all = boxUnion(formPatches(form).map(({ outline }) => boundsOf(polygon(outline))));
  const k = Math.min(room.width / (all.max.x - all.min.x), room.height / (all.max.y - all.min.y));
  const by = scale(point(-(all.min.x + all.max.x) / 2, -(all.min.y + all.max.y) / 2), k);
  const marks = outlines.map(
    ({ path, of }): LineMark =>
      lineMark(news.includes(of) ? 'cut' : 'mark', translated(scaled(path, k, k), by), { ground: true }),
  );
  // No room above and below for what is not there yet.
  const { min, max } = boundsOf(marks.flatMap(({ path }) => path));
  return {
    width: room.width,
    height: max.y - min.y + 1,
    marks: movedMarks(marks, point(room.width / 2, 0.5 - min.y)),
  };
};
