import { mm, type Words, words } from '../../words.ts';
import { markedLength } from '../marked-length.ts';
import {
  matchWords,
  nameOf,
  needleSettings,
  notchesIn,
  rowsAlong,
  seamMinutes,
  seamSettings,
  topstitched,
} from '../said.ts';
import { type Step, step } from '../step.ts';
import { STITCH } from '../stitches.ts';
import { lengthCheck } from '../while-sewn.ts';
import { type Group, pieceOf, piecesIn, type Work } from '../work.ts';
import { rowsStep } from './brim.ts';
import { nickWords, trimWords } from './visor.ts';

/** Two hats sewn together at the brim's edge, and turned through one of them. */
export const brimEdgeLastSteps = (work: Work, group: Group): readonly Step[] => {
  const [report] = group.seams;
  if (report === undefined) return [];
  const ids = piecesIn(group.seams);
  const marks = notchesIn(work, group.seams);
  return [
    step({
      id: group.id,
      phase: 'close',
      title: 'Sew both hats together',
      show: 'together',
      words: [
        words`Put one hat into the other, right sides together, so that the brims meet.`,
        ...matchWords(marks, report),
        words`Sew all the way round the outer edge.`,
        ...trimWords(work.pattern.allowances.brimEdge),
        nickWords,
      ],
      checks: [lengthCheck(work, report)],
      pieces: ids,
      seams: [report.seam.id],
      marks,
      settings: seamSettings(work, group.seams),
      minutes: seamMinutes(group.seams, 8),
    }),
    ...turnSteps(work),
    ...rowsStep(work, ids, 'close'),
  ];
};

/** The gap in the lining, through which all is turned and which is sewn shut. */
export const turnSteps = (work: Work): readonly Step[] => {
  const piece = work.pattern.pieces.find(
    (one) => one.id.startsWith('lining') && markedLength(one, 'turning gap') !== null,
  );
  const gap = markedLength(piece, 'turning gap');
  if (piece === undefined || gap === null) return [];
  const visored = work.pattern.pieces.some(({ id }) => id === 'visor');
  const hat = work.pattern.pieces.some(({ id }) => id.startsWith('brim')) ? 'hat' : 'cap';
  return [
    step({
      id: 'turn',
      phase: 'close',
      title: `Turn the ${hat} right side out`,
      show: 'cap',
      words: [
        words`Pull the ${hat} through the turning gap, which is ${mm(gap)} long.`,
        ...(visored ? [words`Fold the visor end to end, gently, and pull it through first.`] : []),
        words`Push the lining into the crown.`,
        words`Close the gap by hand with a ladder stitch.`,
      ],
      checks: [words`No stitches of the gap show.`],
      pieces: [piece.id],
      marks: [{ piece: piece.id, name: 'turning gap' }],
      settings: { trade: { stitch: '200' } },
      minutes: [10, 20],
    }),
  ];
};

/** A facing has no gap: it is turned in and caught down. */
export const facingSteps = (work: Work): readonly Step[] => {
  const facing = pieceOf(work, 'liningBand');
  if (facing === undefined || markedLength(facing, 'turning gap') !== null) return [];
  return [
    step({
      id: 'facing',
      phase: 'close',
      title: 'Turn the facing in',
      show: 'hem',
      words: [
        words`Fold the facing to the inside and roll the seam a little inwards.`,
        words`Turn in its free edge, or neaten it with a zigzag.`,
        words`Catch it down by hand over the seam of the band.`,
      ],
      checks: [words`The facing lies flat inside and does not show.`],
      pieces: ['liningBand'],
      settings: { trade: { stitch: '200' } },
      minutes: [15, 35],
    }),
  ];
};

/** A line of stitches that keeps band and lining band where they are. */
export const lowerEdgeSteps = (work: Work): readonly Step[] => {
  const band = pieceOf(work, 'band');
  if (band === undefined || pieceOf(work, 'liningBand') === undefined) return [];
  const visored = work.pattern.pieces.some(({ id }) => id === 'visor');
  const inner = nameOf(work, 'liningBand');
  const seen = topstitched(
    rowsAlong(work, [{ piece: 'band', edge: 'bottom' }]),
    (at) => words`Topstitch it all round, ${at} from the edge${visored ? ' and above the visor' : ''}.`,
  );
  return [
    step({
      id: 'lowerTopstitch',
      phase: 'close',
      title: 'Topstitch the lower edge',
      show: 'hem',
      words: [words`Press the lower edge, the ${inner} rolled a little inwards.`, ...seen.words],
      checks: [words`The ${inner} does not peep out.`],
      cautions: visored
        ? ([
            words`Do not press the stiffener: an iron melts plastic.`,
            words`Turn the wheel by hand where the visor makes the seam thick.`,
          ] satisfies readonly Words[])
        : [],
      pieces: ['band', 'liningBand'],
      rows: seen.rows,
      settings: needleSettings(work, ['band', 'liningBand'], {
        stitch: STITCH.topstitch,
        ...seen.set,
        trade: { stitch: '301' },
      }),
      minutes: [6, 15],
    }),
  ];
};
