import type { Cloth } from '../pattern/piece.ts';
import type { Cloths } from './cloth.ts';

/**
 * What the thickness of the cloth adds round the head, mm. A layer that goes round on top of others goes round 2π times
 * their thickness more; its own length is that of its middle.
 */
export interface TurnOfCloth {
  readonly shell: number;
  /** Of what lies against the head. */
  readonly inner: number;
  /** Of the lining, where there is one. */
  readonly lining: number;
  /** One layer of the outer cloth. */
  readonly outer: number;
  /** From the head to the middle of the shell, mm. */
  readonly depth: number;
}

/**
 * From the layers that lie inside the shell at its lower edge, from the head outwards: a lining or a facing, an
 * interlining, a sweatband. Nothing inside: the shell's own inner face lies on the head. The lining is the outermost
 * layer of its cloth: a sweatband of the same lies inside it.
 */
export const turnOfCloth = (cloths: Cloths, inside: readonly Cloth[]): TurnOfCloth => {
  const upTo = (count: number) => inside.slice(0, count).reduce((sum, one) => sum + cloths[one].thickness, 0);
  const depth = upTo(inside.length) + cloths.outer.thickness / 2;
  const first = inside[0] ?? 'outer';
  const lining = inside.lastIndexOf('lining');
  const inner = Math.PI * cloths[first].thickness;
  return {
    shell: 2 * Math.PI * depth,
    inner,
    lining: lining < 0 ? inner : 2 * Math.PI * (upTo(lining) + cloths.lining.thickness / 2),
    outer: cloths.outer.thickness,
    depth,
  };
};
