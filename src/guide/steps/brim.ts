import { degrees } from '../../units.ts';
import { count, mm, words } from '../../words.ts';
import {
  basteSettings,
  matchWords,
  needleSettings,
  notchesIn,
  rowsAlong,
  seamMinutes,
  seamSettings,
} from '../said.ts';
import { type Step, step } from '../step.ts';
import { STITCH } from '../stitches.ts';
import { lengthCheck } from '../while-sewn.ts';
import { type Group, pieceOf, piecesIn, type Work } from '../work.ts';
import { nickWords, trimWords } from './visor.ts';

/** A brim that slopes less than this closes to a ring that is all but flat, radians: our own bound. */
const LEVEL = degrees(10);

/** A brim is a ring, whole or of several pieces. */
export const brimSideSteps = (work: Work, group: Group): readonly Step[] => {
  const under = group.id.startsWith('under');
  const n = group.seams.length;
  return [
    step({
      id: group.id,
      phase: 'visor',
      title: `Close the ${under ? 'under' : 'upper'} brim`,
      show: 'together',
      words: [
        n === 1
          ? words`Fold the brim right sides together and sew its short ends to each other.`
          : words`Lay the pieces right sides together and sew their short ends, so that they make a ring.`,
        words`Press each seam open.`,
      ],
      checks: [
        Number(work.values.brimDrop) > LEVEL
          ? words`The ring has no twist, and stands up like a low cone.`
          : words`The ring lies flat, or nearly so, without a twist.`,
      ],
      pieces: piecesIn(group.seams),
      seams: group.seams.map(({ seam }) => seam.id),
      settings: seamSettings(work, group.seams, { press: 'open' }),
      minutes: seamMinutes(group.seams),
    }),
  ];
};

/** A brim wider than this is wired or stiffened, mm: four inches, common practice. */
const WIDE_BRIM = 101.6;

export const brimEdgeSteps = (work: Work, group: Group): readonly Step[] => {
  const marks = notchesIn(work, group.seams);
  const ids = piecesIn(group.seams);
  const stiff = ids.some((id) => pieceOf(work, id)?.cuts.some(({ cloth }) => cloth === 'stiffener'));
  return [
    step({
      id: group.id,
      phase: 'visor',
      title: 'Sew the brim’s outer edge',
      show: 'together',
      words: [
        words`Lay the upper brim and the under brim right sides together.`,
        ...matchWords(marks, group.seams[0]),
        words`Sew all the way round the outer edge.`,
        ...trimWords(work.pattern.allowances.brimEdge),
        nickWords,
        words`Turn the brim right side out and press the edge.`,
        ...(Number(work.values.brimWidth) > WIDE_BRIM && !stiff
          ? [
              words`A brim of more than ${mm(WIDE_BRIM)} droops: run millinery wire along the seam inside, or choose a stiffener.`,
            ]
          : []),
        ...(stiff ? [words`Slip in the stiffener, and lay its ends edge to edge. Do not let them lap.`] : []),
      ],
      checks: [
        ...group.seams.map((report) => lengthCheck(work, report)),
        words`The seam lies just on the edge.`,
      ],
      cautions: stiff ? [words`Press before the stiffener goes in: an iron melts plastic.`] : [],
      pieces: ids,
      seams: group.seams.map(({ seam }) => seam.id),
      marks,
      settings: seamSettings(work, group.seams),
      minutes: seamMinutes(group.seams, 6),
    }),
    ...rowsStep(work, ids, 'visor'),
  ];
};

/** Rows of stitching round the brim, as many as fit. */
export const rowsStep = (work: Work, ids: readonly string[], phase: 'visor' | 'close'): readonly Step[] => {
  const rows = rowsAlong(
    work,
    ids.map((piece) => ({ piece, edge: 'outer' })),
  );
  // The same distances on every piece of the ring.
  const distances = [...new Set(rows.map(({ at }) => at))];
  const [first, second] = distances;
  if (first === undefined) return [];
  const n = distances.length;
  const stiff = ids.some((id) => pieceOf(work, id)?.cuts.some(({ cloth }) => cloth === 'stiffener'));
  const outer = ids.flatMap(
    (id) => pieceOf(work, id)?.dimensions.find(({ name }) => name === 'Outer edge') ?? [],
  );
  return [
    step({
      id: 'brimRows',
      phase,
      title: 'Topstitch the brim',
      show: 'turned',
      words: [
        second === undefined
          ? words`Sew one row, ${mm(first)} from the outer edge.`
          : words`Sew ${count(n)} rows, ${mm(second - first)} apart. The first lies ${mm(first)} from the outer edge.`,
        words`Start each row at the back. Go round and round, from the edge to the crown.`,
      ],
      checks: [words`The rows run even and the brim does not ripple.`],
      cautions: stiff
        ? [
            words`Use a new, strong needle and sew slowly: a needle can break on stiff sheet. Guard your eyes.`,
          ]
        : [],
      pieces: ids,
      rows,
      settings: needleSettings(work, ids, {
        stitch: STITCH.topstitch,
        topstitch: first,
        trade: { stitch: '301' },
      }),
      minutes: [n * 3 + outer.length, n * 7 + 2 * outer.length],
    }),
  ];
};

export const brimInnerSteps = (work: Work, group: Group): readonly Step[] => {
  const marks = notchesIn(work, group.seams);
  return [
    step({
      id: group.id,
      phase: 'visor',
      title: 'Baste the brim’s inner edge',
      show: 'turned',
      words: [
        words`Lay the inner edges of both brims on each other.`,
        ...matchWords(marks, group.seams[0]),
        words`Baste them together inside the allowance.`,
      ],
      checks: group.seams.map((report) => lengthCheck(work, report)),
      pieces: piecesIn(group.seams),
      seams: group.seams.map(({ seam }) => seam.id),
      marks,
      settings: basteSettings(work, group.seams),
      minutes: seamMinutes(group.seams),
    }),
  ];
};
