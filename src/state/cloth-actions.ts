import type { Scrap } from '../cloth/cloth.ts';
import { clothOfKind, kindOf } from '../cloth/kinds.ts';
import type { Cloth } from '../pattern/piece.ts';
import { settle, wishing } from './actions.ts';
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
