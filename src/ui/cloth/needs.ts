import { commonWidths } from '../../cloth/buying.ts';
import type { ClothSpec, Cloths } from '../../cloth/cloth.ts';
import { type ClothLay, clothLay } from '../../cloth/cloth-lay.ts';
import layWorker from '../../cloth/lay.worker.ts?beside';
import type { LayAnswer, LayOrder } from '../../cloth/lay-messages.ts';
import { layPieces } from '../../cloth/lay-pieces.ts';
import { layTask } from '../../cloth/lay-task.ts';
import type { LayCap, LayWish } from '../../cloth/lay-wish.ts';
import { offTheBolt } from '../../cloth/off-the-bolt.ts';
import type { ClothNeed, Needs } from '../../cloth/shopping.ts';
import type { Layout } from '../../nesting/layout.ts';
import type { Cloth } from '../../pattern/piece.ts';
import type { Unit } from '../../units.ts';

/** Lays every cloth of some caps off the bolt, at its own width and at those that shops have, in a worker. Rejected where it is stopped. */
export const needsOf = async (
  caps: readonly LayCap[],
  cloths: Cloths,
  unit: Unit,
  signal: AbortSignal,
): Promise<Needs> => {
  const worker = new Worker(layWorker, { type: 'module' });
  signal.addEventListener('abort', () => worker.terminate());
  try {
    const needs: { -readonly [C in Cloth]?: Needs[C] } = {};
    for (const cloth of usedIn(caps)) {
      const spec = cloths[cloth];
      const toBuyOf = (laid: ClothSpec) => lengthToBuy(worker, { caps, cloth, spec: laid }, signal);
      const own = { width: spec.width, length: await toBuyOf(offTheBolt(spec)) };
      const common: ClothNeed[] = [];
      for (const width of commonWidths[unit])
        common.push({ width, length: await toBuyOf(offTheBolt(spec, width)) });
      needs[cloth] = { own, common };
    }
    return needs;
  } finally {
    worker.terminate();
  }
};

/** Plastic and card are bought by the piece, not off a bolt. */
const usedIn = (caps: readonly LayCap[]): readonly Cloth[] =>
  (['outer', 'lining', 'interlining'] as const).filter((cloth) =>
    caps.some(({ cutting }) => cutting.pieces.some(({ cuts }) => cuts.some((cut) => cut.cloth === cloth))),
  );

/** mm; null where the pieces find no place. */
const lengthToBuy = async (worker: Worker, wish: LayWish, signal: AbortSignal): Promise<number | null> => {
  const pieces = layPieces(wish);
  const layout = await firstLayout(worker, { task: layTask(pieces, wish.spec), seed: 1, time: 0 });
  signal.throwIfAborted();
  return layout === null || layout.unplaced.length > 0 ? null : clothLay(wish, pieces, layout).bought;
};

/** The lay of every cloth of some caps as it is at hand; `shown` is the one on the table, which a hand may have changed. */
export const laysOf = async (
  caps: readonly LayCap[],
  cloths: Cloths,
  shown: ClothLay | null,
): Promise<readonly ClothLay[]> => {
  const worker = new Worker(layWorker, { type: 'module' });
  try {
    const lays: ClothLay[] = [];
    for (const cloth of [...usedIn(caps), 'stiffener' as const]) {
      const wish = { caps, cloth, spec: cloths[cloth] };
      const pieces = layPieces(wish);
      if (pieces.length === 0) continue;
      if (shown?.cloth === cloth) {
        lays.push(shown);
        continue;
      }
      const layout = await firstLayout(worker, { task: layTask(pieces, wish.spec), seed: 1, time: 0 });
      if (layout !== null) lays.push(clothLay(wish, pieces, layout));
    }
    return lays;
  } finally {
    worker.terminate();
  }
};

/** The best of the first answers to an order; null where it could not be laid at all. */
const firstLayout = (worker: Worker, order: LayOrder): Promise<Layout | null> =>
  new Promise((resolve) => {
    let found: Layout | null = null;
    const take = ({ data }: MessageEvent<LayAnswer>): void => {
      if (data.kind === 'layout') found = data.layout;
      if (data.kind !== 'finished' && data.kind !== 'failed') return;
      worker.removeEventListener('message', take);
      resolve(found);
    };
    worker.addEventListener('message', take);
    worker.postMessage(order);
  });
