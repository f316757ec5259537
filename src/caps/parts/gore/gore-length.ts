import type { Figure } from '../../../pattern/piece.ts';
import { exactMm, words } from '../../../words.ts';
import type { Head } from '../../style.ts';

/** Up the middle of a gore, mm, where a band below it takes some of the way over the head. */
export const goreLength = (crownRoom: number, head: Head, bandHeight: number): number =>
  head.arc / 2 + crownRoom - bandHeight;

export const goreLengthFigure = (crownRoom: number, head: Head, bandHeight: number): Figure => {
  const length = goreLength(crownRoom, head, bandHeight);
  const [sign, size] = [crownRoom < 0 ? '−' : '+', exactMm(Math.abs(crownRoom))];
  const room = words`${exactMm(head.arc)} ÷ 2 ${sign} ${size}`;
  const name = 'Up the middle of a gore';
  return bandHeight > 0
    ? {
        name,
        formula: 'arc over the head ÷ 2 + crown room − band height',
        worked: words`${room} − ${exactMm(bandHeight)} = ${exactMm(length)}`,
      }
    : {
        name,
        formula: 'arc over the head ÷ 2 + crown room',
        worked: words`${room} = ${exactMm(length)}`,
      };
};
