import type { SeamReport } from '../../pattern/seam-check.ts';
import { mm, ratio, type Words, words } from '../../words.ts';
import {
  marksNamed,
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
import { SECOND_ROW, STITCH } from '../stitches.ts';
import { lengthCheck, soLong } from '../while-sewn.ts';
import { type Group, pieceOf, piecesIn, usesOf, type Work } from '../work.ts';
import { gapWords } from './crown.ts';

/** A band, a facing, a sweatband or a casing becomes a ring. */
export const ringSteps = (work: Work, group: Group): readonly Step[] => {
  const ids = piecesIn(group.seams);
  const name = nameOf(work, ids[0]!);
  return [
    step({
      id: group.id,
      phase: group.phase,
      title: `Close the ${name} to a ring`,
      show: 'together',
      words: [
        words`Fold the ${name} right sides together and sew its short ends.`,
        words`Press the seam open.`,
      ],
      checks: [words`The ring has no twist.`],
      pieces: ids,
      seams: group.seams.map(({ seam }) => seam.id),
      settings: seamSettings(work, group.seams, { press: 'open' }),
      minutes: seamMinutes(group.seams),
    }),
  ];
};

/** The crown is sewn to the band; what is longer is gathered or pleated first. */
export const bandTopSteps = (work: Work, group: Group): readonly Step[] => {
  const [report] = group.seams;
  if (report === undefined) return [];
  const ids = piecesIn(group.seams);
  const inside = group.phase === 'lining';
  const band = ids.find((id) => id === 'band' || id === 'liningBand') ?? ids[0]!;
  const marks = notchesIn(work, group.seams);
  const crown = inside ? 'lining' : 'crown';
  const gap = inside ? gapWords(work, ids) : [];
  const seen = topstitched(
    rowsAlong(work, report.seam.b),
    (at) => words`Topstitch the ${nameOf(work, band)} ${at} from the seam.`,
  );
  return [
    ...fullnessStep(work, group, crown),
    step({
      id: group.id,
      phase: group.phase,
      title: `Sew the ${crown} to the ${nameOf(work, band)}`,
      show: 'together',
      onTop: sideOf(report, band),
      words: [
        words`Slip the ${nameOf(work, band)} over the ${crown}, right sides together and edges level.`,
        ...matchWords(marks, report),
        ...(report.seam.ease > 0 ? [words`Spread the fullness evenly between the pins.`] : []),
        ...gap,
        gap.length > 0 ? words`Sew all the rest.` : words`Sew all the way round.`,
        words`Press the allowances to the ${nameOf(work, band)}.`,
        ...seen.words,
      ],
      checks: [
        report.seam.ease > 0
          ? words`The seam is ${soLong(work, report, 'a', 'round')}.`
          : lengthCheck(work, report),
        words`The seam of the ${nameOf(work, band)} lies at the centre back.`,
      ],
      cautions: thickCautions(work),
      pieces: ids,
      seams: [report.seam.id],
      marks: [...marks, ...(gap.length > 0 ? marksNamed(work, ids, 'turning gap') : [])],
      rows: seen.rows,
      settings: seamSettings(work, group.seams, { press: { towards: band }, ...seen.lapped }),
      minutes: seamMinutes(group.seams, 8),
    }),
  ];
};

/** From this thickness of one layer on, mm, crossings are too high for a running machine: our own step. */
const THICK = 0.7;

const thickCautions = ({ cloths }: Work): readonly Words[] =>
  cloths.outer.thickness >= THICK
    ? [words`Where seams cross it is thick: turn the wheel by hand, so that no needle breaks.`]
    : [];

const fullnessStep = (work: Work, group: Group, crown: string): readonly Step[] => {
  const [report] = group.seams;
  if (report === undefined || !(report.seam.ease > 0)) return [];
  const inside = group.phase === 'lining';
  const full = [...new Set(report.seam.b.map(({ piece }) => piece))];
  const pleated = full.some((id) => pieceOf(work, id)?.marks.some(({ kind }) => kind === 'pleat'));
  const lengths = words`The edge is ${soLong(work, report, 'b', 'long')}, ${ratio(report.seam.ease)} longer than the band.`;
  return [
    pleated
      ? step({
          id: `${group.id}Pleats`,
          phase: group.phase,
          title: 'Fold the pleats',
          show: 'flat',
          words: [
            lengths,
            words`Fold each pleat on the line of dashes and dots. Lay the fold on the plain line, as the arrow points.`,
            words`All folds point to the back. Pin them, then baste them inside the allowance.`,
          ],
          checks: [words`With the pleats folded the edge is ${soLong(work, report, 'a', 'round')}.`],
          pieces: full,
          marks: marksNamed(work, full, 'pleat'),
          settings: needleSettings(work, full, { stitch: STITCH.baste, trade: { stitch: '301' } }),
          minutes: [10, 25],
        })
      : step({
          id: `${group.id}Gathers`,
          phase: group.phase,
          title: `Gather the ${crown}`,
          show: 'flat',
          words: gatherWords(lengths),
          checks: [words`Drawn up, the edge is ${soLong(work, report, 'a', 'round')}.`],
          pieces: full,
          cautions: !inside && isTooThick(work, report) ? [thickGatherWords] : [],
          held: report.seam.b.flatMap(({ piece, edge }) =>
            [-SECOND_ROW / 2, SECOND_ROW / 2].map((at) => ({ piece, edge, at })),
          ),
          marks: marksNamed(work, full, 'gather'),
          settings: needleSettings(work, full, { stitch: STITCH.baste, trade: { stitch: '301' } }),
          minutes: [8, 20],
        }),
  ];
};

/** An edge draws up while its fullness, in parts of one, times the thickness of the cloth is below this, mm: our own bound. */
const MOST_GATHERED = 0.5;

const isTooThick = ({ cloths }: Work, { seam }: SeamReport): boolean =>
  seam.ease * cloths.outer.thickness > MOST_GATHERED;

const thickGatherWords: Words = words`Cloth so thick hardly draws up so far: pleats, thinner cloth or less fullness lie flatter.`;

const gatherWords = (lengths: Words): readonly Words[] => [
  lengths,
  words`Sew two rows of long stitches, ${mm(SECOND_ROW)} apart, one on each side of the stitch line.`,
  words`Sew them quarter by quarter, so that no thread breaks. Leave long ends.`,
  words`Draw up the threads below until the edge is as long as the band.`,
];

/** A strap at the back in two halves. */
export const backStrapSteps = (work: Work, group: Group): readonly Step[] => {
  const ids = piecesIn(group.seams);
  const seen = topstitched(
    rowsAlong(work, usesOf(group.seams)),
    (at) => words`Topstitch ${at} from the edge.`,
  );
  return [
    step({
      id: group.id,
      phase: 'band',
      title: 'Make the back strap',
      show: 'together',
      words: [
        words`Lay two strap halves right sides together.`,
        words`Sew round the long edges and the round end. Leave the straight end open.`,
        words`Turn it with a blunt point and press. Make the other half the same way.`,
        ...seen.words,
        words`Sew hook and loop tape, a press stud or a small buckle where the halves lie on each other.`,
      ],
      checks: [words`Each edge is ${soLong(work, group.seams[0]!, 'a', 'long')}. Both halves are alike.`],
      cautions: [
        words`Take plastic or covered fastenings where metal makes the skin itch.`,
        words`No stud and no buckle for a child under three: a loose part can choke.`,
      ],
      pieces: ids,
      seams: group.seams.map(({ seam }) => seam.id),
      rows: seen.rows,
      settings: seamSettings(work, group.seams, seen.set),
      minutes: seamMinutes(group.seams, 8),
    }),
  ];
};

/** An elastic in a folded strip, for the back. */
export const elasticCasingSteps = (work: Work): readonly Step[] => {
  const piece = pieceOf(work, 'elasticCasing');
  if (piece === undefined) return [];
  return [
    step({
      id: 'elasticCasing',
      phase: 'band',
      title: 'Make the elastic casing',
      show: 'flat',
      words: [
        words`Fold the casing along its middle line, wrong sides together, and press.`,
        words`Lay the elastic in the fold and sew its ends to the ends of the casing.`,
        ...piece.notes.slice(0, 1),
      ],
      checks: [words`The casing gathers up, and stretches flat when you pull.`],
      cautions: [words`Some elastic holds latex: ask, if the skin does not bear it.`],
      pieces: ['elasticCasing'],
      settings: needleSettings(work, ['elasticCasing'], { stitch: STITCH.seam, trade: { stitch: '301' } }),
      minutes: [8, 15],
    }),
  ];
};

export const tieSteps = (work: Work, group: Group): readonly Step[] => [
  step({
    id: group.id,
    phase: 'band',
    title: 'Make the ties',
    show: 'together',
    words: [
      words`Fold each tie along its middle line, right sides together.`,
      words`Sew the long edge and one short end. Turn it with a blunt point and press.`,
    ],
    checks: [words`Each tie is ${soLong(work, group.seams[0]!, 'a', 'long')}.`],
    cautions: [words`No ties on a child’s cap: cords can catch and strangle. Take elastic.`],
    pieces: piecesIn(group.seams),
    seams: group.seams.map(({ seam }) => seam.id),
    settings: seamSettings(work, group.seams),
    minutes: seamMinutes(group.seams, 5),
  }),
];
