import type { Cloth } from '../pattern/piece.ts';
import type { Cloths } from './cloth.ts';

/**
 * What the thickness of the cloth adds round the head, mm: to the stitch line of the shell, and to that of what lies
 * against the head. A layer that goes round on top of others goes round 2π times their thickness more; its own length
 * is that of its middle.
 */
export interface TurnOfCloth {
  readonly shell: number;
  readonly inner: number;
  /** From the head to the middle of the shell, mm. */
  readonly depth: number;
}

/**
 * From the layers that lie inside the shell at its lower edge, from the head outwards: a lining or a facing, an
 * interlining, a sweatband. Nothing inside: the shell's own inner face lies on the head.
 */
export const turnOfCloth = (cloths: Cloths, inside: readonly Cloth[]): TurnOfCloth => {
  const between = inside.reduce((sum, cloth) => sum + cloths[cloth].thickness, 0);
  const depth = between + cloths.outer.thickness / 2;
  const first = inside[0] ?? 'outer';
  return { shell: 2 * Math.PI * depth, inner: Math.PI * cloths[first].thickness, depth };
};
