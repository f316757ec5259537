import { commonWidths } from '../../cloth/buying.ts';
import type { ClothSpec, Cloths } from '../../cloth/cloth.ts';
import type { LayCap } from '../../cloth/lay-wish.ts';
import { offTheBolt } from '../../cloth/off-the-bolt.ts';
import type { ClothNeed, Needs } from '../../cloth/shopping.ts';
import { clothsOf } from '../../pattern/cloths-of.ts';
import type { Cloth } from '../../pattern/piece.ts';
import type { Unit } from '../../units.ts';
import { layingBeside } from './laying-beside.ts';

/**
 * Lays every cloth of some caps off the bolt, at its own width and at those that shops have, in a worker. Sheets of plastic
 * and buckram have no common width. Rejected where it is stopped, and where a cloth cannot be laid.
 */
export const needsOf = (
  caps: readonly LayCap[],
  cloths: Cloths,
  unit: Unit,
  signal: AbortSignal,
): Promise<Needs> =>
  layingBeside(signal, async (lay) => {
    const needs: { -readonly [C in Cloth]?: Needs[C] } = {};
    for (const cloth of clothsOf(caps.flatMap(({ cutting }) => cutting.pieces))) {
      const spec = cloths[cloth];
      /** mm; null where the pieces find no place. */
      const toBuyOf = async (laid: ClothSpec): Promise<number | null> => {
        const { left, bought } = await lay({ caps, cloth, spec: laid });
        return left.length > 0 ? null : bought;
      };
      const own = { width: spec.width, length: await toBuyOf(offTheBolt(spec)) };
      const common: ClothNeed[] = [];
      for (const width of cloth === 'stiffener' ? [] : commonWidths[unit])
        common.push({ width, length: await toBuyOf(offTheBolt(spec, width)) });
      needs[cloth] = { own, common };
    }
    return needs;
  });
