import { shrinkageApart } from '../../cloth/shrinkage.ts';
import type { Cloth, Piece } from '../../pattern/piece.ts';
import { type Words, words } from '../../words.ts';
import { shrinkerOf } from '../care.ts';
import { partOf } from '../parts.ts';
import { listed, needleSettings, spoken } from '../said.ts';
import { type Step, step } from '../step.ts';
import { STITCH } from '../stitches.ts';
import type { Work } from '../work.ts';

/** What gives the pieces body goes on while they are flat. */
export const interlineSteps = (work: Work): readonly Step[] => [
  ...bodyStep(work, 'interlining'),
  ...bodyStep(work, 'stiffener'),
];

/** Whether a piece is cut from the outer cloth and from what lies under it. */
export const isCoveredBy = ({ cuts }: Piece, inside: 'interlining' | 'stiffener'): boolean =>
  cuts.some(({ cloth }) => cloth === inside) && cuts.some(({ cloth }) => cloth === 'outer');

/** The stiffener of a visor or a brim is slipped in later, when its cover is sewn. */
const takesNow = (piece: Piece, cloth: 'interlining' | 'stiffener'): boolean =>
  isCoveredBy(piece, cloth) && (cloth === 'interlining' || partOf(piece.id) === 'crown');

/** Two cloths that shrink by more than this apart, parts of one, bubble when they are glued to each other: our own bound. */
const APART = 0.0125;

const shrinksUnlike = ({ cloths: { outer, interlining } }: Work): boolean =>
  shrinkageApart(outer, interlining) > APART;

/** Whether an interlining that has or may have glue goes on cloth that has still to shrink by more than it does. */
export const isFusedUnlike = (work: Work): boolean =>
  work.pattern.pieces.some((piece) => isCoveredBy(piece, 'interlining')) &&
  !SEWN_ON.includes(work.cloths.interlining.kind) &&
  shrinksUnlike(work);

const SEWN_ON = ['buckram', 'canvas'];

const bodyStep = (work: Work, cloth: 'interlining' | 'stiffener'): readonly Step[] => {
  const pieces = work.pattern.pieces.filter((piece) => takesNow(piece, cloth));
  if (pieces.length === 0) return [];
  const ids = pieces.map(({ id }) => id);
  const names = listed(pieces.map(({ name }) => spoken(name)));
  const how = howTo(work.cloths[cloth].kind, cloth);
  const small = cloth === 'interlining' && shrinksUnlike(work);
  return [
    step({
      id: cloth,
      phase: 'interline',
      title: cloth === 'interlining' ? 'Add the interlining' : 'Add the stiffener',
      show: 'body',
      words: [
        words`Lay the ${cloth} on the wrong side of the ${names}, inside the stitch line.`,
        ...(small
          ? [words`It is as large as the piece will be after the ${shrinkerOf(work)}: lay it in the middle.`]
          : []),
        ...how.words,
        ...pieces
          .filter((piece) => oneOfTwo(piece, cloth))
          .map(({ name }): Words => words`One layer of the ${spoken(name)} gets it: the upper one.`),
      ],
      checks: [words`No ${cloth} lies in the seam allowance.`],
      cautions: [
        ...(small && isFusedUnlike(work)
          ? [words`Glued to cloth that has still to shrink, it bubbles: take one without glue and baste it.`]
          : []),
        ...how.cautions,
      ],
      pieces: ids,
      settings: how.sewn ? needleSettings(work, ids, { stitch: STITCH.baste, trade: { stitch: '301' } }) : {},
      minutes: [3 + 3 * pieces.length, 6 + 6 * pieces.length],
    }),
  ];
};

/** A visor or a brim has two layers and often one interlining. */
const oneOfTwo = ({ cuts }: Piece, cloth: Cloth): boolean => {
  const count = (of: (cut: Piece['cuts'][number]) => boolean): number =>
    cuts.filter(of).reduce((sum, cut) => sum + cut.count, 0);
  return (
    count((cut) => cut.cloth === cloth) < count((cut) => cut.cloth === 'outer' || cut.cloth === 'lining')
  );
};

interface How {
  readonly words: readonly Words[];
  readonly cautions: readonly Words[];
  readonly sewn: boolean;
}

const FUSED: How = {
  words: [
    words`Press it on without sliding the iron: lift it and set it down again.`,
    words`Let it cool before you move it.`,
  ],
  cautions: [words`The iron is hot and steam scalds. Try the heat on a scrap first.`],
  sewn: false,
};

const SEWN: How = {
  words: [words`Baste it by hand or machine, just inside its edge.`],
  cautions: [],
  sewn: true,
};

/** Buckram takes a hand needle; plastic and card do not. */
const STIFFENED: Readonly<Record<string, readonly Words[]>> = {
  buckram: [words`Tack it by hand along the edge with long stitches.`],
  'visor-sheet': [words`Hold it with a few dabs of cloth glue: a hand needle does not pass it.`],
};
const EITHER = [
  words`Tack buckram by hand along the edge. Hold plastic or card with a few dabs of cloth glue.`,
];

const howTo = (kind: string, cloth: 'interlining' | 'stiffener'): How => {
  if (cloth === 'stiffener') return { words: STIFFENED[kind] ?? EITHER, cautions: [], sewn: false };
  if (kind === 'woven-fusible') return FUSED;
  if (SEWN_ON.includes(kind)) return SEWN;
  return {
    words: [words`If it has glue, press it on. If it has none, baste it just inside its edge.`],
    cautions: FUSED.cautions,
    sewn: true,
  };
};
