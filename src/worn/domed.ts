import { type Point3, scale3, subtract3 } from '../geometry/space.ts';
import { knotAt, NO_FINER, type Sheet } from './sheet.ts';

const COLUMNS = 7;

/** A button that is drafted as a cone, from its middle to its rim: bowed, as high as it was and level in the middle. */
export const domed = (sheet: Sheet): Sheet => {
  const { rows, columns } = sheet;
  const rim = Array.from({ length: rows }, (_, i) => knotAt(sheet, (i + 1) * columns - 1));
  const up = subtract3(knotAt(sheet, 0), middleOf(rim));
  const at = new Float64Array(3 * rows * COLUMNS);
  const flat = new Float64Array(2 * rows * COLUMNS);
  for (let i = 0; i < rows; i++) {
    const [from, to] = [i * columns, (i + 1) * columns - 1];
    for (let j = 0; j < COLUMNS; j++) {
      const [k, t] = [i * COLUMNS + j, j / (COLUMNS - 1)];
      const mixed = (values: Float64Array, size: number, c: number) =>
        values[size * from + c]! * (1 - t) + values[size * to + c]! * t;
      // A straight line has come down by t where the bow has by t².
      const bow = scale3(up, t - t * t);
      at.set(
        [mixed(sheet.at, 3, 0) + bow.x, mixed(sheet.at, 3, 1) + bow.y, mixed(sheet.at, 3, 2) + bow.z],
        3 * k,
      );
      flat.set([mixed(sheet.flat, 2, 0), mixed(sheet.flat, 2, 1)], 2 * k);
    }
  }
  return { ...sheet, disc: 'button', columns: COLUMNS, finer: NO_FINER, at, flat };
};

const middleOf = (round: readonly Point3[]): Point3 => {
  // The first stands again at the end.
  const ring = round.slice(1);
  const mean = (c: 'x' | 'y' | 'z') => ring.reduce((sum, p) => sum + p[c], 0) / ring.length;
  return { x: mean('x'), y: mean('y'), z: mean('z') };
};
