import type { Cloth, Cut } from '../pattern/piece.ts';

/** What each cloth is called on a piece. */
export const clothNames: Readonly<Record<Cloth, string>> = {
  outer: 'Outer',
  lining: 'Lining',
  interlining: 'Interlining',
  stiffener: 'Stiffener',
};

/** How many to cut, as the trade writes it: "Outer: cut 2 + 2 mirrored". */
export const cutWords = ({ cloth, count, mirrored = 0 }: Cut): string => {
  const straight = count - mirrored;
  const parts = [straight > 0 ? `${straight}` : '', mirrored > 0 ? `${mirrored} mirrored` : ''];
  return `${clothNames[cloth]}: cut ${parts.filter((p) => p !== '').join(' + ')}`;
};
