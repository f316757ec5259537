import { words } from '../../words.ts';
import {
  marksNamed,
  matchWords,
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
import { type Group, pieceOf, piecesIn, type Work } from '../work.ts';
import { trimWords } from './visor.ts';

/** A casing turned in all round, and what runs in it. */
export const casingOnSteps = (work: Work, group: Group): readonly Step[] => {
  const [report] = group.seams;
  if (report === undefined) return [];
  const ids = piecesIn(group.seams);
  const ties = pieceOf(work, 'tie') !== undefined;
  const marks = notchesIn(work, group.seams);
  return [
    step({
      id: group.id,
      phase: 'close',
      title: 'Sew on the casing',
      show: 'together',
      onTop: sideOf(report, 'casing'),
      words: [
        ...(ties ? [words`Hem the short ends of the casing.`] : []),
        words`Lay the casing on the lower edge, right sides together.`,
        ...matchWords(marks, report),
        words`Sew all the way round.`,
        ...trimWords(work.pattern.allowances.lower),
      ],
      checks: [lengthCheck(work, report), girthCheck(work)],
      pieces: ids,
      seams: [report.seam.id],
      marks,
      settings: seamSettings(work, group.seams),
      minutes: seamMinutes(group.seams, 8),
    }),
    drawInStep(work, ties),
  ];
};

const drawInStep = (work: Work, ties: boolean): Step => {
  const notes = (pieceOf(work, 'casing')?.notes ?? []).slice(ties ? 1 : 0);
  const seen = topstitched(rowsAlong(work, [{ piece: 'casing', edge: 'top' }]), (at) =>
    ties
      ? words`Topstitch the free edge down all round, ${at} from it. Keep the ties clear of the needle.`
      : words`Topstitch the free edge down, ${at} from it. Leave a gap at the back for the elastic.`,
  );
  return step({
    id: 'drawIn',
    phase: 'close',
    title: ties ? 'Turn the casing in over the ties' : 'Turn the casing in and draw in the elastic',
    show: 'hem',
    words: [
      words`Fold the casing to the inside and turn in its free edge.`,
      ...(ties ? notes : []),
      ...seen.words,
      ...(ties ? [] : [...notes, words`Sew the gap shut.`]),
    ],
    checks: [ties ? words`The ties slide in the casing.` : words`The back draws in and stretches again.`],
    cautions: ties
      ? [words`No ties on a child’s cap: cords can catch and strangle. Take elastic.`]
      : [words`Some elastic holds latex: ask, if the skin does not bear it.`],
    pieces: ['casing', ...(ties ? ['tie'] : [])],
    marks: marksNamed(work, ['casing'], ties ? 'tie' : 'elastic'),
    rows: seen.rows,
    settings: needleSettings(work, ['casing'], {
      stitch: STITCH.topstitch,
      ...seen.set,
      trade: { stitch: '301' },
    }),
    minutes: [10, 25],
  });
};
