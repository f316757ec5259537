import type { EdgeUse } from '../../pattern/seam.ts';
import { words } from '../../words.ts';
import {
  basteSettings,
  matchWords,
  nameOf,
  needleSettings,
  notchesIn,
  rowsAlong,
  seamMinutes,
  seamSettings,
  sideOf,
  topstitched,
} from '../said.ts';
import { type Step, step } from '../step.ts';
import { STITCH } from '../stitches.ts';
import { girthCheck, lengthCheck } from '../while-sewn.ts';
import { type Group, pieceOf, piecesIn, piecesOfPart, type Work } from '../work.ts';
import { hasPart } from './join.ts';
import { trimWords, visorBetween } from './visor.ts';

/** A sweatband or a facing is sewn to the lower edge and turned in. */
export const sweatbandOnSteps = (work: Work, group: Group): readonly Step[] => {
  const [report] = group.seams;
  if (report === undefined) return [];
  const ids = piecesIn(group.seams);
  const name = nameOf(work, 'sweatband');
  const strapped = hasPart(ids, 'backStrap') || hasPart(ids, 'elasticCasing');
  const marks = notchesIn(work, group.seams).filter(({ name: n }) => n !== 'visor end');
  const round = group.id === 'lowerEdge';
  const visor = visorBetween(work);
  const brimmed = piecesOfPart(work, 'brim').length > 0;
  return [
    ...(strapped ? [strapStep(work, ids)] : []),
    step({
      id: group.id,
      phase: 'close',
      title: `Sew in the ${name}`,
      show: 'together',
      onTop: sideOf(report, 'sweatband'),
      words: [
        brimmed
          ? words`Turn the brim up over the crown. Lay the ${name} on the under brim, right sides together and edges level.`
          : words`Lay the ${name} on the lower edge, right sides together${visor.lies}.`,
        ...matchWords(marks, report),
        ...(strapped
          ? [words`Turn its ends in at the edge of the opening, over the ends of the strap.`]
          : []),
        words`Sew all the way round through all layers.`,
        ...(brimmed
          ? [words`Sew just inside the seam of the brim, so that none of it is seen.`]
          : visor.words),
        ...trimWords(work.pattern.allowances.lower),
      ],
      cautions: visor.cautions,
      checks: [lengthCheck(work, report), ...(round ? [girthCheck(work)] : [])],
      pieces: ids,
      seams: [report.seam.id],
      marks,
      settings: seamSettings(work, group.seams),
      minutes: seamMinutes(group.seams, 8),
    }),
    turnInStep(
      work,
      name,
      report.seam.a.filter(({ piece }) => !hasPart([piece], 'backStrap')),
    ),
  ];
};

const strapStep = (work: Work, ids: readonly string[]): Step => {
  const straps = ids.filter((id) => hasPart([id], 'backStrap') || hasPart([id], 'elasticCasing'));
  const name = hasPart(straps, 'backStrap') ? 'strap halves' : 'casing';
  const opening = straps.flatMap((id) =>
    (pieceOf(work, id)?.notches ?? [])
      .filter((notch) => notch.name === 'edge of the opening')
      .map((notch) => ({ piece: id, name: notch.name })),
  );
  return step({
    id: 'strapOn',
    phase: 'close',
    title: `Baste the ${name} to the back`,
    show: 'flat',
    words: [
      words`Lay the ends of the ${name} on the right side of the crown, at the edge of the opening.`,
      words`The notch of the ${name} meets the edge of the opening.`,
      words`Baste the ends down inside the allowance.`,
    ],
    checks: [words`The strap lies straight across the opening.`],
    pieces: straps,
    marks: opening.slice(0, 1),
    settings: basteSettings(work, []),
    minutes: [4, 8],
  });
};

const turnInStep = (work: Work, name: string, lower: readonly EdgeUse[]): Step => {
  const facing = name === 'facing';
  const visored = work.pattern.pieces.some(({ id }) => id === 'visor');
  const seen = topstitched(
    rowsAlong(work, lower),
    (at) => words`Topstitch all the way round, ${at} from the lower edge.`,
  );
  return step({
    id: 'turnIn',
    phase: 'close',
    title: `Turn the ${name} in`,
    show: 'hem',
    words: [
      words`Fold the ${name} to the inside and roll the seam a little inwards.`,
      ...seen.words,
      ...(facing
        ? [words`Turn in its free edge and catch it down by hand.`]
        : [
            words`If it is cut from lining, turn its free edge in first. A ribbon needs none of that.`,
            words`Catch its free edge to the lining or the seams by hand, here and there.`,
          ]),
    ],
    checks: [words`The ${name} lies flat inside and does not show.`],
    cautions: visored ? [words`Turn the wheel by hand where the visor makes the seam thick.`] : [],
    pieces: ['sweatband'],
    rows: seen.rows,
    settings: needleSettings(work, ['sweatband', ...outerIds(work)], {
      stitch: STITCH.topstitch,
      ...seen.set,
      trade: { stitch: '301' },
    }),
    minutes: [10, 30],
  });
};

const outerIds = ({ pattern }: Work): readonly string[] =>
  pattern.pieces.filter(({ cuts }) => cuts.some(({ cloth }) => cloth === 'outer')).map(({ id }) => id);
