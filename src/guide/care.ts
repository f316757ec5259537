import type { ClothSpec } from '../cloth/cloth.ts';
import { type Care, kindOf } from '../cloth/kinds.ts';
import type { Cloth } from '../pattern/piece.ts';
import { type Words, words } from '../words.ts';
import { partOf } from './parts.ts';
import { clothWord } from './said.ts';
import { clothsWorn, pieceOf, type Work } from './work.ts';

/** How a cap is cleaned: as its most tender cloth needs. */
export const careOf = (work: Work): Care => {
  const all = clothsWorn(work).map((cloth) => kindOf(work.cloths[cloth])?.care);
  return (['dryClean', 'steam'] as const).find((care) => all.includes(care)) ?? 'wash';
};

/** What makes it smaller the first time. */
export const shrinkerOf = (work: Work): 'wash' | 'steaming' =>
  careOf(work) === 'wash' ? 'wash' : 'steaming';

export const hasBuckram = ({ pattern, cloths }: Work): boolean =>
  pattern.pieces.some(({ cuts }) => cuts.some(({ cloth }) => cloths[cloth].kind === 'buckram'));

const hasStiffCrown = ({ pattern }: Work): boolean =>
  pattern.pieces.some(
    ({ id, cuts }) => partOf(id) === 'crown' && cuts.some(({ cloth }) => cloth === 'stiffener'),
  );

/** Whether it can bear neither wash nor steam. */
export const staysDry = (work: Work): boolean => hasBuckram(work) || hasStiffCrown(work);

const hasPile = (cloth: ClothSpec): boolean => kindOf(cloth)?.pile ?? false;
const isTender = (cloth: ClothSpec): boolean => (kindOf(cloth)?.care ?? 'wash') !== 'wash';

/** What holds each time that an iron comes near. */
export const pressWords = (work: Work): readonly Words[] =>
  clothsWorn(work).flatMap((name): readonly Words[] => {
    const cloth = work.cloths[name];
    if (hasPile(cloth))
      return [
        words`Each time you press the ${clothWord(name)}, do so from the wrong side, on a towel: an iron crushes its pile.`,
      ];
    if (isTender(cloth))
      return [
        words`Each time you press the ${clothWord(name)}, lay a press cloth on it: a bare iron marks it.`,
      ];
    // What the switch means is not known: a pile, or a print.
    if (cloth.nap && kindOf(cloth) === undefined)
      return [words`If the ${clothWord(name)} has a pile, press it from the wrong side, on a towel.`];
    return [];
  });

/** The same in short, for some pieces: "on a towel". Null where nothing has to be said. */
export const pressedHow = (work: Work, ids: readonly string[]): string | null => {
  const cut = new Set(ids.flatMap((id) => pieceOf(work, id)?.cuts.map(({ cloth }) => cloth) ?? []));
  const pressed = (['outer', 'lining'] as const satisfies readonly Cloth[])
    .filter((name) => cut.has(name))
    .map((name) => work.cloths[name]);
  if (pressed.some(hasPile)) return 'on a towel, from the wrong side';
  return pressed.some(isTender) ? 'through a press cloth' : null;
};
