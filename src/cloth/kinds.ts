import type { Cloth } from '../pattern/piece.ts';
import type { ClothSpec } from './cloth.ts';

/** How a cap of some cloth is cleaned: washed at home, or brushed and steamed, or given to a dry cleaner. */
export type Care = 'wash' | 'steam' | 'dryClean';

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
  /** Threads that stand up, which an iron crushes. */
  readonly pile: boolean;
  /** What its first wash or steam takes: parts of one, along and across. */
  readonly shrink: readonly [number, number];
  readonly care: Care;
  /** Its cut edges fall apart, so that a narrow allowance is too little. */
  readonly frays: boolean;
  /** Matted so that its cut edges hold without neatening. */
  readonly fulled: boolean;
  /** Threads that run one way; felt has none. */
  readonly grain: boolean;
}

type Traits = Partial<Pick<ClothKind, 'nap' | 'pile' | 'care' | 'frays' | 'fulled' | 'grain'>>;

const kind = (
  id: string,
  name: string,
  uses: readonly Cloth[],
  thickness: number,
  width: number,
  shrink: readonly [number, number],
  traits: Traits = {},
): ClothKind => ({ ...plain, id, name, uses, thickness, width, shrink, ...traits });

const plain = {
  nap: false,
  pile: false,
  care: 'wash',
  frays: false,
  fulled: false,
  grain: true,
} as const satisfies Traits;

const pile: Traits = { nap: true, pile: true, frays: true };
/** Matted wool: an iron with steam shapes it, a wash mats it more. */
const fulled: Traits = { care: 'steam', fulled: true };
/** Silk and its like, which water marks. */
const silken: Traits = { care: 'dryClean', frays: true };

/**
 * Thicknesses, widths, shrinkages and care from memory and common practice of the trade; no published table of them was
 * found. A check that weighs: cotton of 340 g/m² is about 0.75 mm thick.
 */
export const clothKinds: readonly ClothKind[] = [
  kind('quilting-cotton', 'Quilting cotton', ['outer', 'lining'], 0.3, 1100, [0.03, 0.03]),
  kind('poplin', 'Poplin', ['outer', 'lining'], 0.25, 1420, [0.03, 0.02]),
  kind('linen', 'Linen', ['outer', 'lining'], 0.45, 1400, [0.05, 0.04], { frays: true }),
  kind('denim', 'Denim', ['outer'], 0.7, 1480, [0.03, 0.03]),
  kind('canvas', 'Canvas or duck', ['outer', 'interlining'], 0.7, 1450, [0.04, 0.03]),
  kind('fine-corduroy', 'Corduroy, fine', ['outer'], 0.8, 1420, [0.04, 0.02], pile),
  kind('wide-corduroy', 'Corduroy, wide wale', ['outer'], 1.5, 1420, [0.04, 0.02], pile),
  kind('velvet', 'Velvet', ['outer'], 1, 1400, [0.03, 0.02], { ...pile, care: 'dryClean' }),
  kind('tweed', 'Tweed', ['outer'], 1.3, 1480, [0.03, 0.02], { care: 'steam', frays: true }),
  kind('melton', 'Melton', ['outer'], 2, 1480, [0.03, 0.02], { ...fulled, nap: true }),
  kind('boiled-wool', 'Boiled wool', ['outer'], 2, 1400, [0.03, 0.03], fulled),
  kind('felt', 'Felt', ['outer'], 1.2, 900, [0.03, 0.03], { ...fulled, grain: false }),
  kind('silk', 'Silk dupion or satin', ['outer', 'lining'], 0.25, 1370, [0.02, 0.01], silken),
  kind('brocade', 'Brocade', ['outer'], 0.5, 1400, [0.02, 0.01], silken),
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
