import type { OvalParallel } from '../../geometry/oval-parallel.ts';
import type { Piece } from '../../pattern/piece.ts';
import type { EdgeUse, Seam } from '../../pattern/seam.ts';
import { openingOf } from '../opening.ts';
import { jointsAside } from '../parts/brim/sections.ts';
import { brimRatio } from '../parts/brimmed/brim-ratio.ts';
import { goreFacts } from '../parts/gore/gore-facts.ts';
import { goreLayers } from '../parts/gore/gore-layers.ts';
import { tipFact } from '../parts/tip/tip-facts.ts';
import { narrowingLayers } from '../parts/tipped-crown/narrowing-layers.ts';
import { narrowingCrown } from '../parts/tipped-crown/opening.ts';
import type { Fact, Head } from '../style.ts';
import type { SunHatValues } from './parameters.ts';

interface Layer {
  readonly pieces: readonly Piece[];
  readonly seams: readonly Seam[];
  readonly lower: readonly EdgeUse[];
}

/** Either crown of a sun hat, and the opening that its brim is sewn to. */
export interface SunHatCrown {
  readonly shell: Layer;
  readonly lining: Layer | null;
  readonly opening: OvalParallel;
  readonly fact: Fact;
}

/** What the brim is sewn to: of a gored crown, soft and drawn round, the shape the brim gives it. */
export const sunHatOpening = (values: SunHatValues, head: Head): OvalParallel =>
  narrowingCrown(
    openingOf(head, values.ease).shell,
    brimRatio(values, head),
    values.crown === 'gored' ? 0 : values.crownTaper,
  ).opening;

export const sunHatCrown = (values: SunHatValues, head: Head): SunHatCrown => {
  const seamsBelow = jointsAside(values);
  if (values.crown === 'gored') {
    const [fact] = goreFacts(values, head, 0);
    return {
      ...goreLayers(values, head, 0, 'lower', seamsBelow),
      opening: sunHatOpening(values, head),
      fact: fact!,
    };
  }
  const { rim, ...layers } = narrowingLayers({ values, head, ratio: brimRatio(values, head), seamsBelow });
  return { ...layers, fact: tipFact(rim) };
};
