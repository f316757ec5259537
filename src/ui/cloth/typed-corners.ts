import type { Scrap } from '../../cloth/cloth.ts';
import { readCorners } from '../../cloth/scrap-corners.ts';
import type { Point } from '../../geometry/point.ts';
import type { Unit } from '../../units.ts';

/** What is typed of outlines, beside the outline that it was last understood as. */
export type TypedCorners = ReadonlyMap<readonly Point[], string>;

export const forgetCorners = (typed: TypedCorners, ring: readonly Point[]): Map<readonly Point[], string> =>
  new Map([...typed].filter(([other]) => other !== ring));

/** Whether anything typed of these scraps cannot be read. */
export const anyUnread = (scraps: readonly Scrap[], typed: TypedCorners, unit: Unit): boolean =>
  scraps
    .flatMap(({ outline, flaws }) => [outline, ...flaws])
    .some((ring) => {
      const text = typed.get(ring);
      return text !== undefined && !readCorners(text, unit).ok;
    });
