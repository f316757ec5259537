import { pathLength, stretch, tangentAt } from '../../geometry/measure.ts';
import { cross, dot } from '../../geometry/point.ts';
import type { EdgeUse } from '../../pattern/seam.ts';
import { mm, type Words, words } from '../../words.ts';
import { markedLength } from '../marked-length.ts';
import {
  marksNamed,
  matchWords,
  nameOf,
  notchesIn,
  numbered,
  piecesListed,
  plainName,
  rowsAlong,
  seamMinutes,
  seamSettings,
  topstitched,
} from '../said.ts';
import { type Step, step } from '../step.ts';
import { clipsFor } from '../stitches.ts';
import { lengthCheck } from '../while-sewn.ts';
import { type Group, pieceOf, piecesIn, usesOf, type Work } from '../work.ts';
import { nickWords, trimWords } from './visor.ts';

const isLining = ({ phase }: Group): boolean => phase === 'lining';

/** Short seams that close a ring, or close it to be one. */
export const sideSteps = (work: Work, group: Group): readonly Step[] => {
  const { seams } = group;
  const ids = piecesIn(seams);
  const [first] = ids;
  const one = seams.length === 1;
  const name = first === undefined ? 'piece' : plainName(work, first);
  return [
    step({
      id: group.id,
      phase: group.phase,
      title: one ? `Close the ${name} to a ring` : `Join the ${name} pieces`,
      show: 'together',
      words: [
        one
          ? words`Fold the ${name} right sides together and sew its ends to each other.`
          : words`Lay two pieces right sides together and sew one short seam.`,
        ...(one
          ? []
          : [words`Add the next until all ${numbered(seams.length)} seams are sewn and the ring is closed.`]),
        isStiff(work, ids)
          ? words`Press each seam open with your finger: the stiffener is near.`
          : words`Press each seam open.`,
        ...pleatWords(work, ids),
      ],
      checks: [words`The ring has no twist, and its upper edge is all on one side.`],
      pieces: ids,
      seams: seams.map(({ seam }) => seam.id),
      marks: marksNamed(work, ids, 'pleat'),
      settings: seamSettings(work, seams, { press: 'open' }),
      minutes: seamMinutes(seams),
    }),
  ];
};

const pleatWords = (work: Work, ids: readonly string[]): readonly Words[] =>
  marksNamed(work, ids, 'pleat').length > 0 ? [words`Leave the pleats for later.`] : [];

/** The top goes on the ring below it. */
export const tipSteps = (work: Work, group: Group): readonly Step[] => {
  const [report] = group.seams;
  if (report === undefined) return [];
  const ids = piecesIn(group.seams);
  const top = report.seam.a[0]!.piece;
  const side = report.seam.b[0]!.piece;
  const marks = notchesIn(work, group.seams);
  const gap = isLining(group) ? gapWords(work, ids) : [];
  const stiff = isStiff(work, ids);
  const outward = turnOf(work, report.seam.b) > FLAT_TURN;
  const seen = topstitched(
    rowsAlong(work, report.seam.b),
    (at) => words`Topstitch the ${plainName(work, side)} ${at} from the seam.`,
  );
  return [
    step({
      id: group.id,
      phase: group.phase,
      title: `Sew the ${nameOf(work, top)} to the ${plainName(work, side)}`,
      show: 'together',
      onTop: 'b',
      words: [
        words`Pin the ${nameOf(work, top)} to the upper edge of the ${plainName(work, side)}, right sides together.`,
        ...matchWords(marks, report),
        ...(outward
          ? []
          : [
              words`Clip the allowance of the ${plainName(work, side)} every ${mm(clipsFor(report.a))}, so that it opens round the curve.`,
            ]),
        words`Sew with the ${plainName(work, side)} on top, and stop to smooth the cloth.`,
        ...gap,
        ...(outward ? [...trimWords(work.pattern.allowances.crown), nickWords] : []),
        stiff
          ? words`Press the allowances to the ${plainName(work, side)} with your fingers.`
          : words`Press the allowances to the ${plainName(work, side)}, over a ham or a ${outward ? 'bowl' : 'rolled towel'}.`,
        ...seen.words,
      ],
      checks: [lengthCheck(work, report), words`No small tucks are caught in the seam.`],
      cautions: stiff
        ? [
            words`Sew just beside the stiffener: a needle can break on it. Guard your eyes.`,
            words`Keep the iron off the stiffener: plastic melts, and steam softens buckram.`,
          ]
        : [],
      pieces: ids,
      seams: [report.seam.id],
      marks: [...marks, ...(gap.length > 0 ? marksNamed(work, ids, 'turning gap') : [])],
      rows: seen.rows,
      settings: seamSettings(work, group.seams, { press: { towards: side }, ...seen.lapped }),
      minutes: seamMinutes(group.seams, 8),
    }),
  ];
};

const isStiff = (work: Work, ids: readonly string[]): boolean =>
  ids.some((id) => pieceOf(work, id)?.cuts.some(({ cloth }) => cloth === 'stiffener'));

/**
 * A ring whose upper edge turns by more than this on its way round lies nearer to level than to upright: the allowances of
 * such an edge are too long once they are turned in, while those of an upright one are too short. Our own bound, radians.
 */
const FLAT_TURN = Math.PI;

/** By how much a ring of edges turns as its pieces lie flat, to their inside, radians. */
const turnOf = (work: Work, uses: readonly EdgeUse[]): number =>
  uses.reduce((sum, { piece, edge, from, to }) => {
    const whole = pieceOf(work, piece)?.outline.find(({ name }) => name === edge)?.path ?? [];
    const path = from === undefined || to === undefined ? whole : stretch(whole, from, to);
    const length = pathLength(path);
    const ways = Array.from({ length: 33 }, (_, i) => tangentAt(path, (i * length) / 32));
    return ways
      .slice(1)
      .reduce((turned, way, i) => turned + Math.atan2(cross(ways[i]!, way), dot(ways[i]!, way)), sum);
  }, 0);

/** "Leave 8.0 cm open between the marks." */
export const gapWords = (work: Work, ids: readonly string[]): readonly Words[] =>
  ids.flatMap((id) => {
    const gap = markedLength(pieceOf(work, id), 'turning gap');
    return gap === null ? [] : [words`Leave ${mm(gap)} open between the marks of the turning gap.`];
  });

/** The long seams of gores, or of a top and its sides. */
export const goreSteps = (work: Work, group: Group): readonly Step[] => {
  const { seams } = group;
  const ids = piecesIn(seams);
  const marks = notchesIn(work, seams);
  const pointed = ids.some((id) => /gore/i.test(id));
  const seen = topstitched(
    rowsAlong(work, usesOf(seams)),
    (at) => words`Topstitch both sides, ${at} from the seam.`,
  );
  const n = seams.length;
  return [
    step({
      id: group.id,
      phase: group.phase,
      title: titleOf(work, group),
      show: 'together',
      words: [
        words`Lay the edges right sides together.`,
        ...matchWords(marks),
        n === 1
          ? words`Sew the seam.`
          : n === 2
            ? words`Sew both seams alike.`
            : words`Sew all ${numbered(n)} seams alike.`,
        ...(pointed
          ? [words`${tipWords(group)}`]
          : [words`Ease the curve with your fingers, and clip the inward one.`]),
        words`Press ${n === 1 ? 'it' : 'each'} open over a ham or a rolled towel.`,
        ...seen.words,
      ],
      checks: [
        lengthCheck(work, seams[0]!, seams.length),
        ...(group.id.toLowerCase().endsWith('over') ? [words`All points meet in one spot at the top.`] : []),
      ],
      pieces: ids,
      seams: seams.map(({ seam }) => seam.id),
      marks,
      rows: seen.rows,
      settings: seamSettings(work, seams, { press: 'open', ...seen.lapped }),
      minutes: seamMinutes(seams, seen.rows.length > 0 ? 6 : 3),
    }),
  ];
};

const tipWords = ({ id }: Group): string =>
  id.toLowerCase().endsWith('over')
    ? 'Go over the top in one pass, through the point where all seams meet.'
    : 'Sew up to the stitch line at the tip and stop there, not at the cut edge.';

const titleOf = (work: Work, group: Group): string => {
  const { id, seams } = group;
  const lining = isLining(group) ? 'lining ' : '';
  if (/pair$/i.test(id)) return `Sew the ${lining}gores in pairs`;
  if (/half$/i.test(id)) return `Join the ${lining}pairs to halves`;
  if (/over$/i.test(id)) return `Sew the ${lining}halves together`;
  return `Sew the ${piecesListed(work, piecesIn(seams))} together`;
};
