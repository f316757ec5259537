import { SEAM } from '../../../geometry/tolerance.ts';
import { notchesToMeet, type Side } from '../../../pattern/chain.ts';
import type { Notch } from '../../../pattern/piece.ts';
import type { Section } from './sections.ts';

/** A notch on the ring, in parts of the girth from the centre back. */
export interface RingStop {
  readonly at: number;
  readonly count: 1 | 2;
  readonly name: string;
}

const CENTRE_BACK: RingStop = { at: 0, count: 2, name: 'centre back' };

/** What the quarters of a ring are called. */
export const quarterStops: readonly RingStop[] = [
  CENTRE_BACK,
  { at: 1 / 4, count: 1, name: 'side' },
  { at: 1 / 2, count: 1, name: 'centre front' },
  { at: 3 / 4, count: 1, name: 'side' },
];

/** The notches a ring needs to be sewn to what goes round the head, which starts and ends at the centre back. */
export const stopsMeeting = (meets: Side): readonly RingStop[] => {
  const near = (a: number, b: number) => Math.abs(a - b) * meets.length <= SEAM;
  const within = notchesToMeet('', meets)
    .map(({ at, count, name }) => ({ at: at / meets.length, count, name }))
    .filter(({ at }) => !near(at, 0) && !near(at, 1));
  return [
    CENTRE_BACK,
    ...within.map((stop) => {
      const quarter = quarterStops.find(({ at }) => near(at, stop.at));
      return quarter ? { ...stop, at: quarter.at, name: quarter.name } : stop;
    }),
  ];
};

/** Those that fall inside a section, its ends aside; `at` may lie a turn back. */
export const stopsWithin = (stops: readonly RingStop[], { from, to }: Section, girth: number) =>
  stops
    .flatMap((stop) => [stop, { ...stop, at: stop.at - 1 }])
    .filter(({ at }) => (at - from) * girth > SEAM && (to - at) * girth > SEAM)
    .sort((p, q) => p.at - q.at);

/** Whether stops inside a section stand as those inside another do, seen in a mirror. */
export const areMirrored = (
  stops: readonly RingStop[],
  { from }: Section,
  others: readonly RingStop[],
  { to }: Section,
  girth: number,
): boolean =>
  stops.length === others.length &&
  stops.every(({ at, count }) =>
    others.some((o) => o.count === count && Math.abs(at - from - (to - o.at)) * girth <= SEAM),
  );

export const notchesAt = (
  edge: string,
  stops: readonly RingStop[],
  along: (part: number) => number,
): readonly Notch[] => stops.map(({ at, count, name }) => ({ edge, at: along(at), count, name }));
