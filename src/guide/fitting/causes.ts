import type { Values } from '../../caps/parameter.ts';
import { mm, radians, ratio, type Words, words } from '../../words.ts';
import type { FindingId } from './findings.ts';

interface Known {
  readonly key: string;
  readonly values: Values;
  readonly headGirth: number;
  readonly finishedGirth: number;
}

/** The likely cause in this draft, with its numbers. */
export const causeOf = (id: FindingId, known: Known): Words => {
  const { key, headGirth, finishedGirth } = known;
  const now = Number(known.values[key] ?? 0);
  const girth = words`Your head is ${mm(headGirth)} round and the cap ${mm(finishedGirth)} inside.`;
  switch (id) {
    case 'tight':
      return words`${girth} Thick seams take some of that room.`;
    case 'loose':
    case 'pinched':
      return words`${girth} That leaves more room than this head wants.`;
    case 'ears':
      return key === 'ease'
        ? words`${girth} It slides down, since the girth is all that holds it.`
        : words`${depthWords(key, now)} That is more than this head is high.`;
    case 'perches':
      return words`${depthWords(key, now)} The top rests on the head before the edge is down.`;
    case 'temples':
      return key === 'visorLength'
        ? words`The visor takes ${mm(now)} of the edge. On a narrow head its ends push the sides out.`
        : words`${girth} On a narrow head the spare room gathers at the sides.`;
    case 'visorUp':
      return words`The visor is drawn to slope down by ${radians(now)}. On this head it wants more.`;
    case 'collapses':
      return words`${fullWords(key, now)} The cloth is too soft to carry that. Firmer interlining helps as well.`;
    case 'box':
      return words`${fullWords(key, now)} With so little the sides stand straight.`;
    case 'seamsPull':
      return key === 'liningTake'
        ? words`The lining is ${mm(now)} smaller than the crown. It draws the seams in.`
        : words`${fullWords(key, now)} The crown is too tight for what is under it.`;
  }
};

const depthWords = (key: string, now: number): Words =>
  key === 'crownHeight'
    ? words`The crown is ${mm(now)} high.`
    : key === 'sideBandHeight'
      ? words`The side is ${mm(now)} high.`
      : words`The crown has ${mm(now)} of room over the head.`;

const fullWords = (key: string, now: number): Words => {
  switch (key) {
    case 'crownFullness':
      return words`The top is ${mm(now)} further round than the opening.`;
    case 'goreFullness':
      return words`The gores are ${mm(now)} fuller than the opening.`;
    case 'topWidth':
      return words`The top is ${mm(now)} wide.`;
    case 'spread':
      return words`The top spreads ${mm(now)} beyond the head.`;
    case 'crownTaper':
      return words`The top is ${mm(now)} less round than the opening.`;
    case 'goreWidest':
      return words`The gores are widest at ${ratio(now)} of their length.`;
    default:
      return depthWords(key, now);
  }
};
