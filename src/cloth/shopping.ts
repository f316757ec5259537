import type { Cloth, Notion } from '../pattern/piece.ts';
import type { SeamReport } from '../pattern/seam-check.ts';
import type { Unit } from '../units.ts';
import { say } from '../words.ts';
import { toBuy } from './buying.ts';
import type { Cloths } from './cloth.ts';
import { kindOf } from './kinds.ts';
import { threadFor } from './thread.ts';

/** What one cloth takes at one width, mm. */
export interface ClothNeed {
  readonly width: number;
  /** What has to be bought; null where the pieces find no place at this width. */
  readonly length: number | null;
}

/** One cloth on the list. */
export interface ClothItem {
  readonly cloth: Cloth;
  /** The kind's name, where it was taken from the list of kinds. */
  readonly kind: string | null;
  /** At the width of the cloth at hand. */
  readonly own: ClothNeed;
  /** At the widths that shops have. */
  readonly common: readonly ClothNeed[];
  /** Of what has to be bought at its own width, in the user's money; null without a price. */
  readonly cost: number | null;
}

/** A notion, and for how many caps it is needed. */
export interface NeededNotion extends Notion {
  readonly times: number;
}

export interface ShoppingList {
  readonly cloths: readonly ClothItem[];
  readonly notions: readonly NeededNotion[];
  /** mm, an estimate. */
  readonly thread: number;
  /** Of all cloths that have a price; null where none has. */
  readonly cost: number | null;
}

/** The needs of each cloth, at its own width and at common ones, as the lays came out. */
export type Needs = Readonly<
  Partial<Record<Cloth, { readonly own: ClothNeed; readonly common: readonly ClothNeed[] }>>
>;

/** A cap to buy for. */
export interface CapToBuyFor {
  readonly notions: readonly Notion[];
  readonly seams: readonly SeamReport[];
  readonly count: number;
}

/** What to buy for some caps, of which the needs were laid together. */
export const shoppingList = (
  caps: readonly CapToBuyFor[],
  cloths: Cloths,
  needs: Needs,
  unit: Unit,
): ShoppingList => {
  const items = Object.entries(needs).map(([name, { own, common }]): ClothItem => {
    const cloth = name as Cloth;
    const { price } = cloths[cloth];
    const cost = price === null || own.length === null ? null : (toBuy(own.length, unit) / 1000) * price;
    return { cloth, kind: kindOf(cloths[cloth])?.name ?? null, own, common, cost };
  });
  const priced = items.flatMap(({ cost }) => (cost === null ? [] : [cost]));
  return {
    cloths: items,
    notions: notionsOf(caps, unit),
    thread: caps.reduce((sum, { seams, count }) => sum + count * threadFor(seams), 0),
    cost: priced.length === 0 ? null : priced.reduce((sum, cost) => sum + cost, 0),
  };
};

/** What is the same for several caps stands on the list once. */
const notionsOf = (caps: readonly CapToBuyFor[], unit: Unit): readonly NeededNotion[] => {
  const needed = new Map<string, NeededNotion>();
  for (const { notions, count } of caps) {
    for (const notion of notions) {
      const key = `${notion.name}: ${say(notion.size ?? [], unit)}`;
      needed.set(key, { ...notion, times: (needed.get(key)?.times ?? 0) + count });
    }
  }
  return [...needed.values()];
};
