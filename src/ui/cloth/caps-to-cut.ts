import type { Cloths } from '../../cloth/cloth.ts';
import type { LayCap } from '../../cloth/lay-wish.ts';
import type { CapToBuyFor } from '../../cloth/shopping.ts';
import type { Draft } from '../../design/draft.ts';
import type { Spec } from '../../design/spec.ts';
import { notionsOf } from '../../guide/notions.ts';
import { drafted } from '../../state/derived.ts';
import type { LayChoice } from '../../state/lay-choice.ts';
import { openShelved } from '../../state/shelf.ts';
import type { Shelved } from '../../state/shelved.ts';
import type { Studio } from '../../state/state.ts';

/** What a lay follows from: the cap on the table with its cloths, the caps of the shelf, and what is chosen of the lay. */
export type Chosen = Pick<Studio, 'good' | 'shelf' | 'lay'>;

type Counts = Pick<LayChoice, 'here' | 'besides'>;

/** A cap that is cut, with what else it takes. */
export type CapToCut = LayCap & CapToBuyFor;

export interface CapsToCut {
  readonly caps: readonly CapToCut[];
  /** The names of those that cannot be sewn in this cloth. */
  readonly unsewn: readonly string[];
}

/**
 * What is cut together: the cap on the table and the chosen caps of the shelf, all of the cloths on the table, whose
 * thickness and shrinkage count for all. Nothing while the cap on the table cannot be sewn.
 */
export const capsToCut = async ({
  good,
  shelf,
  lay: { here, besides },
}: Pick<Chosen, 'good' | 'shelf'> & { readonly lay: Counts }): Promise<CapsToCut> => {
  const caps: CapToCut[] = [];
  const unsewn: string[] = [];
  const take = (spec: Spec, count: number): void => {
    const draft = drafted(spec);
    if (draft === null) unsewn.push(spec.cap.name);
    else caps.push(cut(draft, count));
  };
  take(good, here);
  for (const cap of shelf) {
    const count = besides[cap.id] ?? 0;
    // Each is a piece of work of its own, so that the hand is not held up.
    if (count > 0) take(await inCloths(cap, good.cloths), count);
  }
  return { caps, unsewn };
};

const cut = (draft: Draft, count: number): CapToCut => ({
  name: draft.spec.cap.name,
  cutting: draft.cutting,
  notions: notionsOf(draft),
  seams: draft.seams,
  count,
});

/** The last of each cap, so that it is drafted once for the same cloths. */
const known = new WeakMap<Shelved, Spec>();

const inCloths = async (cap: Shelved, cloths: Cloths): Promise<Spec> => {
  const last = known.get(cap);
  if (last?.cloths === cloths) return last;
  const { good } = await openShelved(cap);
  await aPause();
  const spec = { ...good, cloths };
  known.set(cap, spec);
  return spec;
};

const aPause = (): Promise<void> => new Promise((done) => setTimeout(done));
