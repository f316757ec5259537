import { STEM } from '../../caps/beret/stem.ts';
import { isLined } from '../../caps/is-lined.ts';
import { kindOf } from '../../cloth/kinds.ts';
import { mm, words } from '../../words.ts';
import {
  marksNamed,
  matchWords,
  needleSettings,
  notchesIn,
  piecesListed,
  rowsAlong,
  seamMinutes,
  seamSettings,
  sideOf,
} from '../said.ts';
import { type Step, step } from '../step.ts';
import { EDGE_STITCH, STITCH } from '../stitches.ts';
import { lengthCheck } from '../while-sewn.ts';
import { type Group, groupsOf, piecesIn, usesOf, type Work } from '../work.ts';

/** A raw curve is bound with a strip. */
export const bindingSteps = (work: Work, group: Group): readonly Step[] => {
  const [report] = group.seams;
  if (report === undefined) return [];
  const ids = piecesIn(group.seams);
  const marks = notchesIn(work, group.seams).filter(({ name }) => name === 'centre back');
  return [
    step({
      id: group.id,
      phase: group.phase,
      title: 'Bind the opening at the back',
      show: 'together',
      onTop: sideOf(report, 'archBinding'),
      words: [
        words`Lay the binding on the edge of the opening, right sides together.`,
        ...matchWords(marks),
        words`Sew a quarter of its width from the edge. Do not stretch the edge.`,
        words`Fold the binding round the edge to the inside, turn in its free edge and topstitch it down.`,
      ],
      checks: [lengthCheck(work, report)],
      pieces: ids,
      seams: [report.seam.id],
      marks,
      settings: seamSettings(work, group.seams, {
        topstitch: EDGE_STITCH,
        trade: { stitch: '301', seam: 'BS' },
      }),
      minutes: seamMinutes(group.seams, 8),
    }),
  ];
};

/** Holes for air, while the pieces are flat. */
export const eyeletSteps = (work: Work): readonly Step[] => {
  const pieces = work.pattern.pieces.filter(({ marks }) => marks.some(({ kind }) => kind === 'eyelet'));
  const hole = pieces.flatMap(({ marks }) =>
    marks.flatMap((m) => (m.kind === 'eyelet' ? [m.diameter] : [])),
  )[0];
  if (hole === undefined) return [];
  const ids = pieces.map(({ id }) => id);
  return [
    step({
      id: 'eyelets',
      phase: 'crown',
      title: 'Work the eyelets',
      show: 'flat',
      words: [
        words`Pierce each eyelet mark with an awl. Do not cut the threads.`,
        words`Work round it with close hand stitches, or press in a metal eyelet. The hole is ${mm(hole)} wide.`,
      ],
      checks: [words`Each gore has its hole at the same height.`],
      cautions: [
        words`Guard your eyes when you hammer an eyelet, and keep fingers clear.`,
        words`Some skin does not bear nickel: take brass, or sew the holes.`,
        words`Sew them for a child under three: a loose eyelet can choke.`,
      ],
      pieces: ids,
      marks: marksNamed(work, ids, 'eyelet'),
      settings: { trade: { stitch: '200' } },
      minutes: [8, 30],
    }),
  ];
};

/** Without a lining the long seams are seen inside. */
export const tapeSteps = (work: Work): readonly Step[] => {
  const gores = work.pattern.pieces.filter(({ outline }) => outline.some(({ kind }) => kind === 'gore'));
  if (gores.length === 0 || isLined(work.pattern)) return [];
  const ids = gores.map(({ id }) => id);
  const groups = groupsOf(work).filter(({ sort }) => sort === 'gore');
  const over = groups.some(({ id }) => id === 'over');
  const topstitched = rowsAlong(work, usesOf(groups.flatMap(({ seams }) => seams))).length > 0;
  return [
    step({
      id: 'tape',
      phase: 'crown',
      title: 'Cover the seams inside',
      show: 'cap',
      words: [
        words`Lay bias tape over each open seam on the inside.`,
        words`Sew both its edges down.`,
        ...(over ? [words`Start with the short seams, and do the one that runs over the top last.`] : []),
        words`The rows show outside${topstitched ? ', beside the topstitching' : ''}: take thread that matches.`,
      ],
      checks: [words`No raw edge is seen inside.`],
      pieces: ids,
      settings: needleSettings(work, ids, { stitch: STITCH.seam, trade: { stitch: '301', seam: 'LS' } }),
      minutes: [15, 40],
    }),
  ];
};

/** Without a lining, and without tape, raw edges inside are kept from fraying while the pieces are flat. */
export const neatenSteps = (work: Work): readonly Step[] => {
  const groups = groupsOf(work).filter(({ sort }) => sort === 'tip' || sort === 'side');
  if (groups.length === 0 || isLined(work.pattern) || kindOf(work.cloths.outer)?.fulled) return [];
  const ids = piecesIn(groups.flatMap(({ seams }) => seams));
  return [
    step({
      id: 'neaten',
      phase: 'crown',
      title: 'Neaten the raw edges',
      show: 'flat',
      words: [
        words`The seams of the ${piecesListed(work, ids)} are seen inside.`,
        words`Zigzag over each raw edge, or bind it, before it is sewn: later seams cross it.`,
      ],
      checks: [words`No thread hangs from an edge, and no edge is drawn in.`],
      pieces: ids,
      settings: needleSettings(work, ids),
      minutes: [8, 20],
    }),
  ];
};

/** The little stem of a beret. */
export const stemSteps = (work: Work): readonly Step[] => {
  const top = work.pattern.pieces.find(({ id }) => id === 'tip' || id === 'gore');
  if (work.values.stem !== true || top === undefined) return [];
  return [
    step({
      id: 'stem',
      phase: 'crown',
      title: 'Set in the stem',
      show: 'flat',
      words: [
        words`Cut a strip of cloth, ${mm(STEM.length)} long and ${mm(STEM.width)} wide.`,
        words`Fold it lengthwise, right sides together. Sew its long edge and turn it.`,
        words`Push its ends through the middle of the top, and catch them down inside by hand.`,
      ],
      checks: [words`Pull it: it holds.`],
      pieces: [top.id],
      settings: { trade: { stitch: '200' } },
      minutes: [5, 15],
    }),
  ];
};
