import type { Values } from '../caps/parameter.ts';
import { FIRST_ROW, stitchRows } from '../caps/parts/brim/stitch-rows.ts';
import type { ClothSpec, Cloths } from '../cloth/cloth.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { Piece, StitchRow } from '../pattern/piece.ts';
import type { EdgeUse, Seam } from '../pattern/seam.ts';
import { words } from '../words.ts';
import { EDGE_STITCH, HALF_FOOT } from './stitches.ts';

/** A row of stitches on a piece. */
export interface Row extends StitchRow {
  readonly piece: string;
}

interface Sewn {
  readonly pattern: Pattern;
  readonly values: Values;
  readonly cloths: Cloths;
}

/**
 * Every row of stitches that is seen from outside, and the row beside the visor's stiffener: what the steps say and what
 * the pieces show. Each place once.
 */
export const rowsOf = (sewn: Sewn): readonly Row[] => {
  const rows = sewn.pattern.seams.flatMap((seam) => rowsAlong(seam, sewn));
  return rows.filter((row, i) => rows.findIndex((other) => isSame(row, other)) === i);
};

const isSame = (one: Row, other: Row): boolean =>
  one.piece === other.piece && one.edge === other.edge && one.at === other.at;

const along = (uses: readonly EdgeUse[], ...distances: readonly number[]): readonly Row[] =>
  uses.flatMap(({ piece, edge }) => distances.map((at) => ({ piece, edge, at })));

const rowsAlong = ({ kind, a, b }: Seam, { pattern, values, cloths }: Sewn): readonly Row[] => {
  const stiffener = pattern.pieces.find(({ id }) => id === 'stiffener');
  switch (kind) {
    case 'crown':
      return along(
        b.filter((use) => isShell(use) && !isStiff(use, pattern)),
        EDGE_STITCH,
      );
    case 'gore':
      return isFirm(cloths.outer) ? along([...a, ...b].filter(isShell), EDGE_STITCH) : [];
    case 'band':
      return along(
        b.filter(({ piece }) => piece === 'band'),
        EDGE_STITCH,
      );
    case 'strapEdge':
      return along(
        a.filter(({ piece }) => piece !== 'tie'),
        EDGE_STITCH,
      );
    case 'visorEdge':
      // Buckram takes the needle; plastic and what is bought do not.
      return cloths.stiffener.kind === 'buckram' && stiffener?.cuts.length ? along(a, FIRST_ROW) : [];
    case 'brimEdge':
      return values.brimStitched === true ? along(a, ...brimRows(values)) : [];
    case 'lower':
      return a[0]?.piece === 'visor' ? along(a, besideStiffener(values)) : turnedInRows(a, b);
    default:
      return [];
  }
};

const isShell = ({ piece }: EdgeUse): boolean => !piece.startsWith('lining');

const isStiff = (use: EdgeUse, { pieces }: Pattern): boolean =>
  pieces.some(({ id, cuts }) => id === use.piece && cuts.some(({ cloth }) => cloth === 'stiffener'));

/** Denim, canvas and their like are topstitched; soft cloth is left. */
const isFirm = ({ kind, thickness }: ClothSpec): boolean =>
  ['denim', 'canvas'].includes(kind) || (kind === 'other' && thickness === 0);

const brimRows = ({ brimWidth, brimRowSpacing }: Values): readonly number[] => {
  const spacing = Number(brimRowSpacing);
  return Array.from({ length: stitchRows(Number(brimWidth), spacing) }, (_, i) => FIRST_ROW + i * spacing);
};

/** The stiffener ends short of the seam: half a presser foot from it lies in the allowance, or at least on the seam. */
const besideStiffener = ({ stiffenerClearance }: Values): number =>
  Math.min(0, Number(stiffenerClearance) - HALF_FOOT);

/** What is turned in at the lower edge is held by a row there; a casing by one along its free edge. */
const turnedInRows = (a: readonly EdgeUse[], b: readonly EdgeUse[]): readonly Row[] => {
  const inner = b.map(({ piece }) => piece);
  if (inner.includes('casing')) return [{ piece: 'casing', edge: 'top', at: EDGE_STITCH }];
  if (!inner.includes('liningBand') && !inner.includes('sweatband')) return [];
  return along(
    a.filter(({ piece }) => piece !== 'backStrap'),
    EDGE_STITCH,
  );
};

/** The same pieces with their rows on them, and what has to be said of the one beside the stiffener. */
export const withRows = (pieces: readonly Piece[], rows: readonly Row[]): readonly Piece[] =>
  pieces.map((piece) => {
    const own = rows.filter((row) => row.piece === piece.id);
    if (own.length === 0) return piece;
    const notes = own.some(({ at }) => at <= 0) ? [...piece.notes, handNote] : piece.notes;
    return { ...piece, notes, rows: own };
  });

const handNote = words`Beside the stiffener sew half a presser foot from its edge, and turn the wheel by hand.`;
