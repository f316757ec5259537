import { commonWidths } from '../../cloth/buying.ts';
import { type ClothLay, clothLay } from '../../cloth/cloth-lay.ts';
import type { LayAnswer, LayOrder } from '../../cloth/lay-messages.ts';
import { layPieces } from '../../cloth/lay-pieces.ts';
import { layTask } from '../../cloth/lay-task.ts';
import type { ClothNeed, Needs } from '../../cloth/shopping.ts';
import type { Draft } from '../../design/derive.ts';
import type { Layout } from '../../nesting/layout.ts';
import type { Cloth } from '../../pattern/piece.ts';
import type { Unit } from '../../units.ts';

/** Lays every cloth of a draft off the bolt, at its own width and at those that shops have, in a worker. Rejected where it is stopped. */
export const needsOf = async (draft: Draft, unit: Unit, signal: AbortSignal): Promise<Needs> => {
  const worker = new Worker(new URL('../../cloth/lay.worker.ts', import.meta.url), { type: 'module' });
  signal.addEventListener('abort', () => worker.terminate());
  try {
    const needs: { -readonly [C in Cloth]?: Needs[C] } = {};
    for (const cloth of usedIn(draft)) {
      const own = await needAt(worker, draft, cloth, draft.spec.cloths[cloth].width, signal);
      const common: ClothNeed[] = [];
      for (const width of commonWidths[unit]) common.push(await needAt(worker, draft, cloth, width, signal));
      needs[cloth] = { own, common };
    }
    return needs;
  } finally {
    worker.terminate();
  }
};

/** Plastic and card are bought by the piece, not off a bolt. */
const usedIn = ({ cutting }: Draft): readonly Cloth[] =>
  (['outer', 'lining', 'interlining'] as const).filter((cloth) =>
    cutting.pieces.some(({ cuts }) => cuts.some((cut) => cut.cloth === cloth)),
  );

const needAt = async (
  worker: Worker,
  { cutting, spec }: Draft,
  cloth: Cloth,
  width: number,
  signal: AbortSignal,
): Promise<ClothNeed> => {
  const bolt = { ...spec.cloths[cloth], width, length: null, scraps: [] };
  const layout = await firstLayout(worker, {
    task: layTask(layPieces(cutting, cloth, bolt), bolt),
    seed: 1,
    time: 0,
  });
  signal.throwIfAborted();
  return { width, length: layout === null || layout.unplaced.length > 0 ? null : layout.length };
};

/** The lay of every cloth of a draft as it is at hand; `shown` is the one on the table, which a hand may have changed. */
export const laysOf = async (draft: Draft, shown: ClothLay | null): Promise<readonly ClothLay[]> => {
  const worker = new Worker(new URL('../../cloth/lay.worker.ts', import.meta.url), { type: 'module' });
  try {
    const lays: ClothLay[] = [];
    for (const cloth of [...usedIn(draft), 'stiffener' as const]) {
      const spec = draft.spec.cloths[cloth];
      const pieces = layPieces(draft.cutting, cloth, spec);
      if (pieces.length === 0) continue;
      if (shown?.cloth === cloth) {
        lays.push(shown);
        continue;
      }
      const layout = await firstLayout(worker, { task: layTask(pieces, spec), seed: 1, time: 0 });
      if (layout !== null) lays.push(clothLay(cloth, spec, pieces, layout));
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
