import { lengthBought, toBuy } from '../../cloth/buying.ts';
import { capsInWords } from '../../cloth/cap-names.ts';
import type { LayCap } from '../../cloth/lay-wish.ts';
import type { ClothNeed, NeededNotion, ShoppingList } from '../../cloth/shopping.ts';
import { STRIPES } from '../../cloth/stripes.ts';
import { threadWords } from '../../cloth/thread.ts';
import { clothNames } from '../../drawing/cut-words.ts';
import { formatLength, type Unit } from '../../units.ts';
import { say } from '../../words.ts';

/** "Buttons: 2, 15 mm across", "3 × Buttons: …" where several caps want the same. */
export const notionWords = ({ name, size, times }: NeededNotion, unit: Unit): string =>
  `${times > 1 ? `${times} × ` : ''}${name}${size === undefined ? '' : `: ${say(size, unit)}`}`;

/** The shopping list as plain text, to be taken along. */
export const shoppingText = (list: ShoppingList, caps: readonly LayCap[], unit: Unit): string => {
  const need = ({ width, length }: ClothNeed): string =>
    `${formatLength(width, unit)} wide: ${length === null ? 'too narrow' : lengthBought(toBuy(length, unit), unit)}`;
  return [
    `For ${capsInWords(caps)}`,
    ...list.cloths.map(
      ({ cloth, kind, own, common }) =>
        `${clothNames[cloth]}${kind === null ? '' : ` (${kind})`}: ${[own, ...common].map(need).join('; ')}`,
    ),
    ...list.notions.map((notion) => notionWords(notion, unit)),
    `Thread: about ${threadWords(list.thread, unit)}`,
    ...(list.cost === null ? [] : [`Cloth with a price: ${list.cost.toFixed(2)}`]),
    STRIPES,
  ].join('\n');
};
