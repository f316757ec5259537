import { lengthBought, toBuy } from '../../cloth/buying.ts';
import type { ClothNeed, ShoppingList } from '../../cloth/shopping.ts';
import { threadWords } from '../../cloth/thread.ts';
import { clothNames } from '../../drawing/cut-words.ts';
import { formatLength, type Unit } from '../../units.ts';
import { say } from '../../words.ts';

/** The shopping list as plain text, to be taken along. */
export const shoppingText = (list: ShoppingList, cap: string, unit: Unit): string => {
  const need = ({ width, length }: ClothNeed): string =>
    `${formatLength(width, unit)} wide: ${length === null ? 'too narrow' : lengthBought(toBuy(length, unit), unit)}`;
  return [
    `For ${cap.trim() === '' ? 'the cap' : cap.trim()}`,
    ...list.cloths.map(
      ({ cloth, kind, own, common }) =>
        `${clothNames[cloth]}${kind === null ? '' : ` (${kind})`}: ${[own, ...common].map(need).join('; ')}`,
    ),
    ...list.notions.map(({ name, size }) => `${name}: ${say(size, unit)}`),
    `Thread: about ${threadWords(list.thread, unit)}`,
    ...(list.cost === null ? [] : [`Cloth with a price: ${list.cost.toFixed(2)}`]),
  ].join('\n');
};
