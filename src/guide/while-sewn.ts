import { growthOf } from '../cloth/shrinkage.ts';
import { pathLength } from '../geometry/measure.ts';
import type { Cloth } from '../pattern/piece.ts';
import type { EdgeUse } from '../pattern/seam.ts';
import type { SeamReport } from '../pattern/seam-check.ts';
import { mm, type Words, words } from '../words.ts';
import { shrinkerOf } from './care.ts';
import { clothsWorn, type Work } from './work.ts';

/** Less than this is not read off a tape, mm. */
const READ = 0.5;

/** How long both sides are, mm, before the first wash, which takes what their pieces are cut larger by; of part of an edge its share. */
const whileSewn = (work: Work, { a, b, seam }: SeamReport): { readonly a: number; readonly b: number } => ({
  a: a + taken(work, seam.a),
  b: b + taken(work, seam.b),
});

/** What the wash will take of some edges, mm. */
const taken = ({ pattern, cutting }: Work, uses: readonly EdgeUse[]): number => {
  if (cutting === pattern) return 0;
  return uses.reduce((sum, { piece, edge, from = 0, to }) => {
    const lengthIn = ({ pieces }: typeof pattern): number =>
      pathLength(
        pieces.find(({ id }) => id === piece)?.outline.find(({ name }) => name === edge)?.path ?? [],
      );
    const [sewn, cut] = [lengthIn(pattern), lengthIn(cutting)];
    return sum + ((cut - sewn) * ((to ?? sewn) - from)) / sewn;
  }, 0);
};

/** "54.6 cm long", or "56.2 cm long now, 54.6 cm after the wash", or after the steaming. */
export const soLong = (work: Work, report: SeamReport, side: 'a' | 'b', how: 'long' | 'round'): Words => {
  const now = whileSewn(work, report)[side];
  const then = report[side];
  return Math.abs(now - then) < READ
    ? words`${mm(then)} ${how}`
    : words`${mm(now)} ${how} now, ${mm(then)} after the ${shrinkerOf(work)}`;
};

/** Whether both sides are as long as each other while they are sewn, as they are in the finished cap. */
export const isEven = (work: Work, report: SeamReport): boolean => {
  const { a, b } = whileSewn(work, report);
  return report.seam.ease === 0 && Math.abs(a - b) < READ;
};

/** Which side has still to shrink by more than the other; null where neither has. */
export const fullerSide = (work: Work, report: SeamReport): 'a' | 'b' | null => {
  const now = whileSewn(work, report);
  const more = now.a - report.a - (now.b - report.b);
  return Math.abs(more) < READ ? null : more > 0 ? 'a' : 'b';
};

/** Both lengths of a seam, or of each of so many alike, as a check; what is longer by a little is eased in. */
export const lengthCheck = (work: Work, report: SeamReport, count = 1): Words => {
  const { a, b, seam } = report;
  if (isEven(work, report)) {
    const length = soLong(work, report, 'a', seam.ring ? 'round' : 'long');
    return count === 1 ? words`Both edges are ${length}.` : words`Each pair of edges is ${length}.`;
  }
  const one = count === 1 ? 'One edge' : 'Of each pair one edge';
  const now = whileSewn(work, report);
  if (Math.abs(now.a - a) < READ && Math.abs(now.b - b) < READ)
    return words`${one} is ${mm(a)} long, the other ${mm(b)}. Ease the longer one in.`;
  const then = seam.ease === 0 ? words`both are ${mm(a)}` : words`they are ${mm(a)} and ${mm(b)}`;
  return words`${one} is ${mm(now.a)} long now, the other ${mm(now.b)}. Ease the longer one in. After the ${shrinkerOf(work)} ${then}.`;
};

/** What the tape must read when the cap is done. */
export const girthCheck = (work: Work): Words =>
  words`Inside, the finished cap is ${mm(work.finishedGirth)} round${afterWash(work)}.`;

/** The cloths that are sewn larger than they will be, since their first wash is still to come. */
export const cutLarger = (work: Work): readonly Cloth[] =>
  clothsWorn(work).filter((name) => {
    const { along, across } = growthOf(work.cloths[name]);
    return along > 1 || across > 1;
  });

/** What is said after a length of the finished cap that it does not have yet. */
export const afterWash = (work: Work): string =>
  cutLarger(work).length > 0 ? ` after its first ${shrinkerOf(work)}` : '';
