import type { Piece } from '../pattern/piece.ts';
import { edgeDistances } from './edge-distances.ts';
import { normalsOf } from './normals.ts';
import { knotCount, NO_FINER, type Sheet, trianglesIn } from './sheet.ts';
import { type Stitch, stitchOf } from './stitch.ts';

/** A mesh for painting: all of a cap in one. Row by row as many numbers as its name says, for every corner. */
export interface Mesh {
  /** mm. */
  readonly position: Float32Array;
  readonly normal: Float32Array;
  /** Across and along the grain of the piece, mm: the place on the cloth. */
  readonly cloth: Float32Array;
  /** mm on the flat piece from the left and the right rail and from the first and the last ruling; FAR where there is no edge. */
  readonly edges: Float32Array;
  /** mm along the left rail and along the right one; what is stitched there (see stitch.ts); and from pleat to pleat, or 0. */
  readonly trim: Float32Array;
  /** Which of the parts it belongs to, and how its faces are seen: see SEEN. */
  readonly part: Float32Array;
  readonly index: Uint32Array;
  /** The pieces' ids. */
  readonly parts: readonly string[];
}

/**
 * What a face shows: the shell's outside and its inside; the outside on both; the inside alone, of lining or, in what is worn
 * either way round, of outer cloth.
 */
export const SEEN = { shell: 0, both: 1, lining: 2, inner: 3 } as const;

/**
 * Cloth that lies in cloth: the lining is painted so much farther, mm, and the inside of the shell twice that, so that from
 * within the lining is seen and from outside never, though the two may touch.
 */
export const BEHIND = 0.8;

/** One layer of a mesh: a sheet with what it is drawn with. */
export interface Layer {
  readonly sheet: Sheet;
  readonly normals: Float64Array;
  readonly corners: readonly number[];
  readonly stitch: Stitch;
  readonly seen: number;
}

/** Half of what is between the covers of a visor and of a brim, mm: a stiffener or interlining. Our own, for the look. */
const HALF_CORE = { visor: 0.9, brim: 0.2 } as const;
/** One cover of cloth that has not been measured, mm. */
const USUAL_COVER = 0.5;

/** Sheets as they are worn, in an outer cloth of some thickness (mm; 0 where it has not been measured). */
export const meshOf = (sheets: readonly Sheet[], pieces: readonly Piece[], outer = 0): Mesh => {
  const layers = sheets.flatMap((sheet) => layersOf(sheet, pieces, outer > 0 ? outer : USUAL_COVER));
  const parts = [...new Set(sheets.map(({ piece }) => piece))];
  const knots = layers.reduce((sum, { sheet }) => sum + knotCount(sheet), 0);
  const mesh = {
    position: new Float32Array(3 * knots),
    normal: new Float32Array(3 * knots),
    cloth: new Float32Array(2 * knots),
    edges: new Float32Array(4 * knots),
    trim: new Float32Array(4 * knots),
    part: new Float32Array(2 * knots),
    index: new Uint32Array(layers.reduce((sum, { corners }) => sum + corners.length, 0)),
    parts,
  };
  let [first, filled] = [0, 0];
  for (const { sheet, normals, corners, stitch, seen } of layers) {
    const count = knotCount(sheet);
    mesh.position.set(sheet.at, 3 * first);
    mesh.normal.set(normals, 3 * first);
    mesh.cloth.set(alongGrain(sheet, pieces), 2 * first);
    const { edges, runs } = edgeDistances(sheet);
    mesh.edges.set(edges, 4 * first);
    const part = parts.indexOf(sheet.piece);
    const pleat = runs[2 * sheet.rows * sheet.columns - 1]! / (pleatsOf(sheet, pieces) || Infinity);
    for (let k = 0; k < count; k++) {
      mesh.trim.set([runs[2 * k]!, runs[2 * k + 1]!, stitch, pleat], 4 * (first + k));
      mesh.part[2 * (first + k)] = part;
      mesh.part[2 * (first + k) + 1] = seen;
    }
    for (let i = 0; i < corners.length; i++) mesh.index[filled + i] = first + corners[i]!;
    filled += corners.length;
    first += count;
  }
  return mesh;
};

const layersOf = (sheet: Sheet, pieces: readonly Piece[], cover: number): readonly Layer[] => {
  const corners = trianglesIn(sheet);
  const normals = normalsOf(sheet, corners);
  const stitch = stitchOf(sheet);
  if (sheet.lining) {
    const own = pieces.find(({ id }) => id === sheet.piece)?.cuts[0]?.cloth;
    return [{ sheet, normals, corners, stitch: 0, seen: own === 'outer' ? SEEN.inner : SEEN.lining }];
  }
  // A disc lies on a copy that may be turned over, and has but one face.
  if (!sheet.open) return [{ sheet, normals, corners, stitch, seen: sheet.disc ? SEEN.both : SEEN.shell }];
  const half = cover + (sheet.piece.startsWith('visor') ? HALF_CORE.visor : HALF_CORE.brim);
  return [
    { ...shifted(sheet, normals, half), corners, stitch, seen: SEEN.both },
    { ...shifted(sheet, normals, -half), corners: turnedOver(corners), stitch, seen: SEEN.both },
    rimOf(sheet, normals, half),
  ];
};

const shifted = (sheet: Sheet, normals: Float64Array, by: number) => ({
  sheet: { ...sheet, at: sheet.at.map((n, i) => n + normals[i]! * by) },
  normals: by > 0 ? normals : normals.map((n) => -n),
});

const turnedOver = (corners: readonly number[]): readonly number[] =>
  corners.map((_, i) => corners[i - (i % 3) + (2 - (i % 3))]!);

/** The outer edge of a thick sheet, along its right rail. */
const rimOf = (sheet: Sheet, normals: Float64Array, half: number): Layer => {
  const { rows, columns } = sheet;
  const at = new Float64Array(6 * rows);
  const flat = new Float64Array(4 * rows);
  for (let row = 0; row < rows; row++) {
    const k = row * columns + columns - 1;
    for (const [j, by] of [half, -half].entries()) {
      for (let c = 0; c < 3; c++) at[6 * row + 3 * j + c] = sheet.at[3 * k + c]! + normals[3 * k + c]! * by;
      for (let c = 0; c < 2; c++) flat[4 * row + 2 * j + c] = sheet.flat[2 * k + c]! + (j === 0 ? 0 : 0.01);
    }
  }
  const rim: Sheet = { ...sheet, columns: 2, finer: NO_FINER, at, flat };
  const corners = trianglesIn(rim);
  return { sheet: rim, normals: normalsOf(rim, corners), corners, stitch: 0, seen: SEEN.both };
};

/** How many pleats are laid in a piece: evenly, so that they stand evenly when sewn. */
const pleatsOf = ({ piece }: Sheet, pieces: readonly Piece[]): number =>
  pieces.find(({ id }) => id === piece)?.marks.filter(({ kind }) => kind === 'pleat').length ?? 0;

const alongGrain = ({ flat, piece, lining }: Sheet, pieces: readonly Piece[]): Float64Array => {
  // A lining shows its right side within.
  const side = lining ? -1 : 1;
  const grain = pieces.find(({ id }) => id === piece)?.grain;
  const [dx, dy] = grain ? [grain[1].x - grain[0].x, grain[1].y - grain[0].y] : [0, 1];
  const length = Math.hypot(dx, dy);
  const [ux, uy] = length > 0 ? [dx / length, dy / length] : [0, 1];
  const turned = new Float64Array(flat.length);
  for (let k = 0; k < flat.length; k += 2) {
    turned[k] = side * (flat[k]! * uy - flat[k + 1]! * ux);
    turned[k + 1] = flat[k]! * ux + flat[k + 1]! * uy;
  }
  return turned;
};
