import type { ClothLay } from '../../cloth/cloth-lay.ts';
import { clothsOf } from '../../pattern/cloths-of.ts';
import { layOf } from '../../state/lay-of.ts';
import { type Chosen, capsToCut } from './caps-to-cut.ts';
import { layFor } from './lay-now.ts';
import { layingBeside } from './laying-beside.ts';

/** The lay of every cloth of what is cut together: the one on the table as a hand has left it, of the others the first that is found. */
export const laysOf = async (chosen: Chosen, signal: AbortSignal): Promise<readonly ClothLay[]> => {
  const shown = layFor(chosen);
  const { cloth: onTable, pins } = layOf(chosen);
  const { caps } = await capsToCut(chosen);
  return layingBeside(signal, async (lay) => {
    const lays: ClothLay[] = [];
    for (const cloth of clothsOf(caps.flatMap(({ cutting }) => cutting.pieces))) {
      const wish = { caps, cloth, spec: chosen.good.cloths[cloth] };
      lays.push(shown?.cloth === cloth ? shown : await lay(wish, cloth === onTable ? pins : []));
    }
    return lays;
  });
};
