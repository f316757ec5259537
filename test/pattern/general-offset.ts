import { EndType, inflatePathsD, JoinType, type PathsD } from 'clipper2-ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { OFFSET } from '../../src/geometry/tolerance.ts';
import type { Piece } from '../../src/pattern/piece.ts';

/** What is added outside every edge, mm: the general library knows one width for a whole outline. */
const WIDTH = 6.35;
const MITRE = 2;
/** Digits after the point that the library computes with: finer than the accuracy asked for. */
const DIGITS = 4;

/** Stitch lines as the closed polygons that the general library works on, within the accuracy of a cut line. */
export const polygonsOf = (pieces: readonly Piece[]): PathsD[] =>
  pieces
    .filter(({ outline }) => outline.some(({ kind }) => kind !== 'none'))
    .map(({ outline }) => [
      flatten(
        outline.flatMap(({ path }) => path),
        OFFSET,
      ).slice(0, -1),
    ]);

/** The cut lines of polygons by an independent library for offsetting (clipper2-ts), mitred, for comparison. */
export const offsetInGeneral = (polygons: readonly PathsD[]): PathsD[] =>
  polygons.map((polygon) =>
    inflatePathsD(polygon, WIDTH, JoinType.Miter, EndType.Polygon, MITRE, DIGITS, OFFSET),
  );
