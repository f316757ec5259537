import type { Cloth } from '../pattern/piece.ts';
import type { ClothSpec } from './cloth.ts';

/** A kind of cloth as it usually comes. All of it is typical only: better measured on the cloth itself. */
export interface ClothKind {
  readonly id: string;
  readonly name: string;
  /** What it is mostly used for in caps. */
  readonly uses: readonly Cloth[];
  /** One layer, mm. */
  readonly thickness: number;
  /** Usable, mm: the bolt's less its selvedges. */
  readonly width: number;
  readonly nap: boolean;
  /** Parts of one, along and across, unwashed. */
  readonly shrink: readonly [number, number];
  /** Its cut edges fall apart, so that a narrow allowance is too little. */
  readonly frays: boolean;
}

const kind = (
  id: string,
  name: string,
  uses: readonly Cloth[],
  thickness: number,
  width: number,
  shrink: readonly [number, number],
  { nap = false, frays = false } = {},
): ClothKind => ({ id, name, uses, thickness, width, nap, shrink, frays });

/**
 * Thicknesses, widths and shrinkages from memory and common practice of the trade; no published table of them was
 * found. A check that weighs: cotton of 340 g/m² is about 0.75 mm thick.
 */
export const clothKinds: readonly ClothKind[] = [
  kind('quilting-cotton', 'Quilting cotton', ['outer', 'lining'], 0.3, 1100, [0.03, 0.03]),
  kind('poplin', 'Poplin', ['outer', 'lining'], 0.25, 1420, [0.03, 0.02]),
  kind('linen', 'Linen', ['outer', 'lining'], 0.45, 1400, [0.05, 0.04], { frays: true }),
  kind('denim', 'Denim', ['outer'], 0.7, 1480, [0.03, 0.03]),
  kind('canvas', 'Canvas or duck', ['outer', 'interlining'], 0.7, 1450, [0.04, 0.03]),
  kind('fine-corduroy', 'Corduroy, fine', ['outer'], 0.8, 1420, [0.04, 0.02], { nap: true, frays: true }),
  kind('wide-corduroy', 'Corduroy, wide wale', ['outer'], 1.5, 1420, [0.04, 0.02], {
    nap: true,
    frays: true,
  }),
  kind('tweed', 'Tweed', ['outer'], 1.3, 1480, [0.03, 0.02], { frays: true }),
  kind('melton', 'Melton', ['outer'], 2, 1480, [0.03, 0.02], { nap: true }),
  kind('felt', 'Felt', ['outer'], 1.2, 900, [0.03, 0.03]),
  kind('satin-lining', 'Satin lining', ['lining'], 0.15, 1400, [0.03, 0.02], { frays: true }),
  kind('woven-fusible', 'Woven fusible', ['interlining'], 0.2, 900, [0.01, 0.01]),
  kind('buckram', 'Buckram', ['interlining', 'stiffener'], 0.7, 900, [0, 0]),
  kind('visor-sheet', 'Plastic visor sheet', ['stiffener'], 1.8, 500, [0, 0]),
];

/** The kind a cloth was taken from; undefined for one of its own. */
export const kindOf = ({ kind: id }: Pick<ClothSpec, 'kind'>): ClothKind | undefined =>
  clothKinds.find((one) => one.id === id);

/** A cloth as its kind usually comes; what the user alone can know stays. */
export const clothOfKind = (found: ClothKind, before: ClothSpec): ClothSpec => ({
  ...before,
  kind: found.id,
  thickness: found.thickness,
  width: found.width,
  nap: found.nap,
  shrinkLength: found.shrink[0],
  shrinkWidth: found.shrink[1],
});
