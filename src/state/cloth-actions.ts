import type { Scrap } from '../cloth/cloth.ts';
import { clothOfKind, kindOf } from '../cloth/kinds.ts';
import type { Placement } from '../nesting/task.ts';
import type { Cloth } from '../pattern/piece.ts';
import { settle, wishing } from './actions.ts';
import type { LayChoice } from './lay-choice.ts';
import { layOf } from './lay-of.ts';
import { useStudio } from './studio.ts';

const get = useStudio.getState;
const set = useStudio.setState;

/** Takes a cloth as its kind usually comes; of a kind that is not on the list only the name is dropped. */
export const putClothKind = (cloth: Cloth, id: string): void => {
  settle();
  const { wish } = get();
  const before = wish.cloths[cloth];
  const kind = kindOf({ kind: id });
  const after = kind ? clothOfKind(kind, before) : { ...before, kind: 'other' };
  set(wishing({ ...wish, cloths: { ...wish.cloths, [cloth]: after } }));
};

/** What is at hand of a cloth in pieces. */
export const putScraps = (cloth: Cloth, scraps: readonly Scrap[]): void => {
  settle();
  const { wish } = get();
  const cloths = { ...wish.cloths, [cloth]: { ...wish.cloths[cloth], scraps } };
  set(wishing({ ...wish, cloths }));
};

const putLay = (changed: Partial<LayChoice>): void => {
  set({ lay: { ...layOf(get()), ...changed } });
};

export const chooseCloth = (cloth: Cloth): void => {
  if (cloth !== layOf(get()).cloth) putLay({ cloth, pins: [] });
};

/** Cuts so many of the cap on the table together. */
export const putCaps = (here: number): void => putLay({ here, pins: [] });

/** Cuts so many of a cap of the shelf with the one on the table. */
export const putBeside = (id: number, count: number): void =>
  putLay({ besides: { ...get().lay.besides, [id]: count }, pins: [] });

/** Puts a piece down where a hand let it go. */
export const pinPiece = (placement: Placement): void =>
  putLay({ pins: [...layOf(get()).pins.filter(({ piece }) => piece !== placement.piece), placement] });

/** Of what was put down only this stays so. */
export const keepPins = (pins: readonly Placement[]): void => putLay({ pins });

export const freePiece = (id: string): void =>
  keepPins(layOf(get()).pins.filter(({ piece }) => piece !== id));

export const freeAll = (): void => keepPins([]);
