import { ovalOfGirth } from '../../geometry/oval.ts';
import type { Figure, Piece } from '../../pattern/piece.ts';
import type { EdgeUse, Seam } from '../../pattern/seam.ts';
import { exactMm, mm, ratio, type Words, words } from '../../words.ts';
import { goredCrown } from '../parts/gore/gored-crown.ts';
import { one } from '../parts/seams/seam.ts';
import { tip } from '../parts/tip/tip.ts';
import { tippedCrown } from '../parts/tipped-crown/tipped-crown.ts';
import { type BeretMeasures, gatherOf } from './measures.ts';
import type { BeretValues } from './parameters.ts';
import { STEM } from './stem.ts';
import { tamReach } from './tam-reach.ts';

/** What is above the band, in one layer of cloth. */
export interface BeretCrown {
  readonly pieces: readonly Piece[];
  readonly seams: readonly Seam[];
  /** The edge that is sewn to the band, from the centre back round to it again, and by what part it is longer than the band. */
  readonly lower: readonly EdgeUse[];
  readonly gather: number;
}

interface CrownWish {
  readonly layer: 'shell' | 'lining';
  readonly measures: BeretMeasures;
  /** What the arithmetic calls the girth of the band that this layer is sewn to. */
  readonly girthName: string;
  readonly figures: readonly Figure[];
}

const clothOf = { shell: 'outer', lining: 'lining' } as const;
const STEM_NOTE: Words = words`Stem: of a strip ${mm(STEM.length)} long and ${mm(STEM.width)} wide sew a loop, turn it, and catch its ends in the middle of the top before the band goes on.`;

export const beretCrown = (values: BeretValues, wish: CrownWish): BeretCrown =>
  crowns[values.beretCrown](values, wish);

type Maker = (values: BeretValues, wish: CrownWish) => BeretCrown;

/** The stem is sewn into the shell alone. */
const stemNotes = ({ stem }: BeretValues, { layer }: CrownWish): readonly Words[] =>
  stem && layer === 'shell' ? [STEM_NOTE] : [];

const disc: Maker = (values, wish) => {
  const { layer, measures, figures } = wish;
  const crown = tippedCrown({
    layer,
    cloth: clothOf[layer],
    rim: ovalOfGirth(measures.rimGirth, 1),
    openingGirth: measures.openingGirth,
    girthName: wish.girthName,
    height: measures.underWidth,
    pieces: values.underPieces,
    names: { tip: 'Top', side: 'Under ring' },
    figures,
    notes: stemNotes(values, wish),
  });
  return { ...crown, gather: 0 };
};

const gored: Maker = (values, wish) => {
  const { layer, measures, figures } = wish;
  const { gores, frontSeam } = values;
  const [id, name] = layer === 'shell' ? ['gore', 'Gore'] : ['liningGore', 'Lining gore'];
  const crown = goredCrown({
    gores,
    frontSeam,
    reach: tamReach(measures, gores),
    kindOf: () => ({ id, name, cloths: [clothOf[layer]], notes: stemNotes(values, wish) }),
    lower: 'band',
    girthName: wish.girthName,
    ...(layer === 'lining' ? { named: { id: 'lining', name: 'Lining: ' } } : {}),
    figures,
  });
  return { ...crown, gather: 0 };
};

const gathered: Maker = (values, wish) => {
  const { layer, measures, figures } = wish;
  const gather = gatherOf(measures);
  const [id, name] = layer === 'shell' ? ['tip', 'Disc'] : ['liningTip', 'Lining disc'];
  const { rimGirth, openingGirth } = measures;
  const surplus: Figure = {
    name: 'Gathered in',
    formula: `round the edge ÷ ${wish.girthName} − 1`,
    worked: words`${exactMm(rimGirth)} ÷ ${exactMm(openingGirth)} − 1 = ${ratio(gather)}`,
  };
  const piece = tip({
    id,
    name,
    cuts: [{ cloth: clothOf[layer], count: 1 }],
    rim: ovalOfGirth(rimGirth, 1),
    eighths: false,
    sewn: 'band',
    figures: [...figures, surplus],
    notes: [
      words`Gather the edge with two rows of long stitches, quarter by quarter, to the length of the band.`,
      ...stemNotes(values, wish),
    ],
  });
  return { pieces: [piece], seams: [], lower: [one(id, 'rim')], gather };
};

const crowns: Readonly<Record<BeretValues['beretCrown'], Maker>> = { disc, gored, gathered };
