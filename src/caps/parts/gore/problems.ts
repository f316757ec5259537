import type { Problem } from '../../../pattern/problem.ts';
import { mm, ratio, words } from '../../../words.ts';
import { openingOf } from '../../opening.ts';
import type { Head } from '../../style.ts';
import { fieldOf } from '../../validate.ts';
import { goreLength } from './gore-length.ts';
import { halfWidthPerReach, reachOfGirth } from './gore-reach.ts';
import { goreParameters } from './parameters.ts';

interface Wish {
  readonly ease: number;
  readonly gores: number;
  readonly crownRoom: number;
  readonly goreWidest: number;
  readonly goreFullness?: number;
}

/** What else is taken from the gores: the height of a band below them, and how much smaller a lining is; mm. */
interface Taken {
  readonly bandHeight: number;
  readonly liningTake: number;
}

/** The way in from the widest place is so much longer than straight: less would be a crease there, not a turn. */
const TURN = 1.1;
/** The greatest part of the way up to the widest place that it may stand out: more, and the crown would hang below level. */
const OUT = 0.6;

/**
 * What of a wished crown of gores cannot be sewn: first whether the cloth reaches the middle at all, then the widest
 * place, then how far the crown stands out there. The lining, shorter and less full, is held to the same.
 */
export const goreProblems = (wish: Wish, head: Head, taken: Taken): readonly Problem[] =>
  [tooShort, tooHigh, tooFull].map((check) => check(wish, head, taken)).find((found) => found.length > 0) ??
  [];

type Check = (wish: Wish, head: Head, taken: Taken) => readonly Problem[];

/** The shortest way from the widest place of a close crown to its middle, mm. */
const wayIn = ({ ease, gores }: Wish, head: Head): number =>
  TURN * reachOfGirth(openingOf(head, ease).shell, gores);

const tooShort: Check = (wish, head, { bandHeight, liningTake }) => {
  const least = wayIn(wish, head) / (1 - goreParameters.goreWidest.min) + liningTake;
  const short = least - goreLength(wish.crownRoom, head, bandHeight);
  if (short <= 0) return [];
  return [
    {
      field: fieldOf('crownRoom'),
      message: words`The gores would not reach the middle of the crown: they are ${mm(short)} too short.`,
      nearest: Math.ceil(wish.crownRoom + short),
    },
  ];
};

const tooHigh: Check = (wish, head, { bandHeight, liningTake }) => {
  const length = goreLength(wish.crownRoom, head, bandHeight) - liningTake;
  const limit = 1 - wayIn(wish, head) / length;
  if (wish.goreWidest <= limit) return [];
  return [
    {
      field: fieldOf('goreWidest'),
      message: words`From so high up the gores would not reach the middle of the crown; at ${ratio(limit)} they just do. Lower, or more crown room.`,
      nearest: Math.max(goreParameters.goreWidest.min, Math.floor(limit * 100) / 100),
    },
  ];
};

const tooFull: Check = (wish, head, { bandHeight, liningTake }) => {
  const { gores, goreWidest, goreFullness = 0, ease } = wish;
  if (goreFullness <= 0) return [];
  const round = 2 * gores * halfWidthPerReach(gores);
  const length = goreLength(wish.crownRoom, head, bandHeight);
  const limitOf = (along: number): number =>
    Math.min(
      (along * (1 - goreWidest) * round) / TURN - openingOf(head, ease).shell,
      OUT * along * goreWidest * round,
    );
  const limit = Math.min(limitOf(length), limitOf(length - liningTake) + liningTake);
  if (goreFullness <= limit) return [];
  return [
    {
      field: fieldOf('goreFullness'),
      message: words`Gores of this length cannot stand out that far and still reach the middle: ${mm(limit)} is the most. Less fullness, or more crown room.`,
      nearest: Math.max(0, Math.floor(limit / 5) * 5),
    },
  ];
};
