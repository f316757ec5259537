import { exactMm, mm, type Words, words } from '../../words.ts';
import {
  matchWords,
  needleSettings,
  notchesIn,
  rowsAlong,
  seamMinutes,
  seamSettings,
  topstitched,
} from '../said.ts';
import { type Step, step } from '../step.ts';
import { HALF_FOOT, STITCH, TRIMMED } from '../stitches.ts';
import { lengthCheck } from '../while-sewn.ts';
import { type Group, pieceOf, piecesIn, piecesOfPart, type Work } from '../work.ts';

/** What is said of needles wherever a stiffener is near. */
export const stiffenerCautions: readonly Words[] = [
  words`Stitch beside the stiffener, never through it: a needle can break and fly. Guard your eyes.`,
  words`Turn the wheel by hand where it is close.`,
];

/** What is said where a seam is sewn for good along the edge that the visor is basted to. Nothing without a visor. */
export const visorBetween = (
  work: Work,
): { readonly lies: string; readonly words: readonly Words[]; readonly cautions: readonly Words[] } => {
  if (pieceOf(work, 'visor') === undefined) return { lies: '', words: [], cautions: [] };
  const clearance = Number(work.values.stiffenerClearance);
  return {
    lies: ', with the visor between',
    words: [
      words`Sew just inside your basting, so that none of it is seen.`,
      ...(clearance < HALF_FOOT
        ? [words`Take a narrow foot: the stitch line runs ${exactMm(clearance)} from the stiffener.`]
        : []),
    ],
    cautions: stiffenerCautions,
  };
};

/** The cover of the visor, then what goes into it. */
export const visorEdgeSteps = (work: Work, group: Group): readonly Step[] => {
  const marks = notchesIn(work, group.seams).filter(({ name }) => name === 'centre front');
  return [
    step({
      id: group.id,
      phase: 'visor',
      title: 'Sew the visor’s outer edge',
      show: 'together',
      words: [
        words`Lay the two covers right sides together.`,
        ...matchWords(marks),
        words`Sew the outer edge and leave the inner edge open.`,
        ...trimWords(work.pattern.allowances.visorEdge),
        nickWords,
      ],
      checks: group.seams.map((report) => lengthCheck(work, report)),
      pieces: piecesIn(group.seams),
      seams: group.seams.map(({ seam }) => seam.id),
      marks,
      settings: seamSettings(work, group.seams),
      minutes: seamMinutes(group.seams, 4),
    }),
    stiffenStep(work),
  ];
};

/** What a seam round an outward curve has too much of, once it is turned. */
export const nickWords: Words = words`Cut small nicks out of the allowance round the curve.`;

/** Enclosed allowances are trimmed, where they are wider than that. */
export const trimWords = (allowance: number): readonly Words[] =>
  allowance > TRIMMED + 0.5
    ? [words`Trim the allowance to ${mm(TRIMMED)}, the one below a little more.`]
    : [];

const stiffenStep = (work: Work): Step => {
  const bought = pieceOf(work, 'stiffener')?.cuts.length === 0;
  const soft = !bought && work.cloths.stiffener.kind === 'buckram';
  const clearance = Number(work.values.stiffenerClearance ?? 0);
  const stiff = bought ? 'insert' : 'stiffener';
  const seen = topstitched(
    rowsAlong(work, [{ piece: 'visor', edge: 'outer' }]),
    (at) => words`Topstitch the outer edge, the first row ${at} from it. Buckram takes the needle.`,
  );
  return step({
    id: 'stiffenVisor',
    phase: 'visor',
    title: bought ? 'Turn the visor and slip in the insert' : 'Turn the visor and slip in the stiffener',
    show: 'turned',
    words: [
      words`Turn the cover right side out and press its edge.`,
      words`Slip in the ${stiff}, its outer curve to the seam.`,
      ...(bought || !(clearance > 0)
        ? []
        : [words`It is smaller than the cover by ${exactMm(clearance)} all round.`]),
      words`Baste the inner edge closed beside the ${stiff}.`,
      ...seen.words,
    ],
    checks: [words`The ${stiff} fills the cover and does not bend at the edge.`],
    cautions: [
      ...(soft ? [] : stiffenerCautions),
      ...(soft ? [] : [words`An iron melts plastic: press before the ${stiff} goes in, and not after.`]),
    ],
    pieces: piecesOfPart(work, 'visor').map(({ id }) => id),
    rows: seen.rows,
    settings: needleSettings(work, ['visor'], {
      stitch: STITCH.baste,
      ...seen.set,
      trade: { stitch: '301' },
    }),
    minutes: [6, 15],
  });
};
