import { pathLength } from '../../geometry/measure.ts';
import { SEAM } from '../../geometry/tolerance.ts';
import type { Notch } from '../../pattern/piece.ts';
import type { SeamReport } from '../../pattern/seam-check.ts';
import { mm, type Words, words } from '../../words.ts';
import { shrinkerOf } from '../care.ts';
import { partOf } from '../parts.ts';
import type { Row } from '../rows.ts';
import {
  basteSettings,
  matchWords,
  nameOf,
  notchesIn,
  rowsAlong,
  seamMinutes,
  seamSettings,
  sideOf,
} from '../said.ts';
import { type Step, step } from '../step.ts';
import { CLIPS, HALF_FOOT } from '../stitches.ts';
import { fullerSide, girthCheck, isEven, lengthCheck, soLong } from '../while-sewn.ts';
import { type Group, pieceOf, piecesIn, type Work } from '../work.ts';
import { stiffenerCautions, visorBetween } from './visor.ts';

/** The visor is basted where it belongs. */
export const visorOnSteps = (work: Work, group: Group): readonly Step[] => {
  const [report] = group.seams;
  if (report === undefined) return [];
  const ids = piecesIn(group.seams);
  const onto = ids.some((id) => id === 'band') ? 'band' : 'crown';
  const marks = notchesIn(work, group.seams).filter(
    ({ name }) => name === 'centre front' || name === 'visor end',
  );
  const middle = middleOfVisor(work);
  const rows = rowsAlong(work, [{ piece: 'visor', edge: 'inner' }]);
  return [
    step({
      id: group.id,
      phase: 'join',
      title: `Baste the visor to the ${onto}`,
      show: 'together',
      onTop: sideOf(report, 'visor'),
      words: [
        words`Lay the visor on the ${onto}, right sides together, its inner edge along the lower edge.`,
        ...matchWords(marks),
        ...middleWords(middle),
        words`Clip the visor’s allowance every ${mm(CLIPS.sharp)}, so that it follows the edge.`,
        words`Baste from one end to the other.`,
        ...besideWords(work, rows),
      ],
      checks: [
        isEven(work, report)
          ? words`The visor’s inner edge and its place are both ${soLong(work, report, 'a', 'long')}.`
          : lengthCheck(work, report),
        words`Turn it down: the ends lie alike on both sides.`,
      ],
      cautions: stiffenerCautions,
      pieces: ids,
      seams: [report.seam.id],
      marks,
      rows,
      settings: basteSettings(work, group.seams),
      minutes: seamMinutes(group.seams, 6),
    }),
  ];
};

/** The notch in the middle of the visor's inner edge, named for what it meets: a seam, or the middle of a gore or piece. */
const middleOfVisor = (work: Work): Notch | undefined => {
  const visor = pieceOf(work, 'visor');
  const inner = pathLength(visor?.outline.find(({ name }) => name === 'inner')?.path ?? []);
  return visor?.notches.find(({ edge, at }) => edge === 'inner' && Math.abs(at - inner / 2) < SEAM);
};

const middleWords = (notch: Notch | undefined): readonly Words[] => {
  if (notch === undefined || notch.name === 'centre front') return [];
  return [
    notch.name === 'seam'
      ? words`The middle notch of the visor meets the seam at the centre front.`
      : words`The middle notch of the visor meets the middle of the front gore.`,
  ];
};

/** How near to the stiffener: the row on the visor lies so much outside the seam, and the stiffener so much inside it. */
const besideWords = (work: Work, rows: readonly Row[]): readonly Words[] =>
  rows.map(({ at }) => {
    const apart = Number(work.values.stiffenerClearance) - at;
    return apart > HALF_FOOT
      ? words`Stay on the stitch line, ${mm(apart)} from the stiffener.`
      : words`Stay half a presser foot from the stiffener: ${mm(apart)}.`;
  });

/** Outer hat and upper brim, or the hat inside and the under brim. */
export const brimOnSteps = (work: Work, group: Group): readonly Step[] => {
  const [report] = group.seams;
  if (report === undefined) return [];
  const inside = group.sort === 'innerBrimOn';
  const [crown, brim] = inside ? ['inner crown', 'under brim'] : ['crown', 'brim'];
  const marks = notchesIn(work, group.seams);
  const towards = report.seam.a[0]!.piece;
  return [
    step({
      id: group.id,
      phase: 'join',
      title: `Sew the ${brim} to the ${crown}`,
      show: 'together',
      onTop: 'a',
      words: [
        words`Pin the lower edge of the ${crown} to the inner edge of the ${brim}, right sides together.`,
        ...matchWords(marks, report),
        words`Clip the brim’s allowance every ${mm(CLIPS.gentle)}.`,
        words`Sew all the way round, with the ${crown} on top.`,
        words`Press the allowances up into the ${crown}.`,
      ],
      checks: [lengthCheck(work, report)],
      pieces: piecesIn(group.seams),
      seams: [report.seam.id],
      marks,
      settings: seamSettings(work, group.seams, { press: { towards } }),
      minutes: seamMinutes(group.seams, 8),
    }),
  ];
};

/** How the lining sits in the crown while one of them has still to shrink; `lining` is its side of the seam. */
const fullWords = (work: Work, report: SeamReport, lining: 'a' | 'b'): Words => {
  const fuller = fullerSide(work, report);
  if (fuller === null) return words`The lining does not pull the crown in.`;
  return fuller === lining
    ? words`The lining lies full in the crown until the ${shrinkerOf(work)}.`
    : words`The crown stands full on the lining until the ${shrinkerOf(work)}.`;
};

/** The lining goes in, edges level. */
export const liningInSteps = (work: Work, group: Group): readonly Step[] => {
  const [report] = group.seams;
  if (report === undefined) return [];
  const lining = sideOf(
    report,
    piecesIn(group.seams).find((id) => partOf(id) === 'lining'),
  );
  const marks = notchesIn(work, group.seams);
  return [
    step({
      id: group.id,
      phase: 'join',
      title: 'Put the lining in',
      show: 'together',
      onTop: lining,
      facing: 'wrong',
      words: [
        words`Slip the lining into the crown, wrong sides together.`,
        ...matchWords(marks, report),
        words`Catch the tops together with a few hand stitches.`,
        words`Baste the lower edges together inside the allowance.`,
      ],
      checks: [lengthCheck(work, report), fullWords(work, report, lining)],
      pieces: piecesIn(group.seams),
      seams: [report.seam.id],
      marks,
      settings: basteSettings(work, group.seams),
      minutes: seamMinutes(group.seams, 6),
    }),
  ];
};

/** Band and lining band, or band and facing, round the lower edge. */
export const innerBandOnSteps = (work: Work, group: Group): readonly Step[] => {
  const [report] = group.seams;
  if (report === undefined) return [];
  const ids = piecesIn(group.seams);
  const inner = nameOf(work, 'liningBand');
  const marks = notchesIn(work, group.seams).filter(({ name }) => name !== 'visor end');
  const visor = visorBetween(work);
  return [
    step({
      id: group.id,
      phase: 'join',
      title: `Sew the ${inner} to the band`,
      show: 'together',
      onTop: sideOf(report, 'liningBand'),
      words: [
        words`Slip the ${inner} over the band, right sides together${visor.lies}.`,
        ...matchWords(marks, report),
        words`Sew all the way round the lower edge.`,
        ...visor.words,
        words`Press the allowances to the ${inner}.`,
      ],
      checks: [lengthCheck(work, report), girthCheck(work)],
      cautions: visor.cautions,
      pieces: ids,
      seams: [report.seam.id],
      marks,
      settings: seamSettings(work, group.seams, { press: { towards: 'liningBand' } }),
      minutes: seamMinutes(group.seams, 8),
    }),
  ];
};

/** A seam that no rule above knows. */
export const otherSteps = (work: Work, group: Group): readonly Step[] => [
  step({
    id: group.id,
    phase: group.phase,
    title: `Sew: ${group.seams[0]!.seam.name.toLowerCase()}`,
    show: 'together',
    words: [
      words`Lay the edges right sides together.`,
      ...matchWords(notchesIn(work, group.seams)),
      words`Sew from end to end, and press the seam open.`,
    ],
    checks: group.seams.map((report) => lengthCheck(work, report)),
    pieces: piecesIn(group.seams),
    seams: group.seams.map(({ seam }) => seam.id),
    marks: notchesIn(work, group.seams),
    settings: seamSettings(work, group.seams, { press: 'open' }),
    minutes: seamMinutes(group.seams),
  }),
];

export const hasPart = (ids: readonly string[], part: ReturnType<typeof partOf>): boolean =>
  ids.some((id) => partOf(id) === part);
