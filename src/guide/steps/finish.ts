import { distance } from '../../geometry/point.ts';
import type { Piece, PieceMark } from '../../pattern/piece.ts';
import { mm, type Words, words } from '../../words.ts';
import { careOf, hasBuckram, staysDry } from '../care.ts';
import { marksNamed, needleSettings, rowsAlong, seamMinutes, seamSettings, topstitched } from '../said.ts';
import { type Step, step } from '../step.ts';
import { afterWash, cutLarger } from '../while-sewn.ts';
import { type Group, pieceOf, piecesIn, usesOf, type Work } from '../work.ts';
import { gapWords } from './crown.ts';

/** The strap over the visor, and its buttons. */
export const strapSteps = (work: Work, group: Group): readonly Step[] => {
  const ids = piecesIn(group.seams);
  const seen = topstitched(
    rowsAlong(work, usesOf(group.seams)),
    (at) => words`Press it and topstitch ${at} from the edge. That shuts the gap.`,
  );
  return [
    step({
      id: group.id,
      phase: 'finish',
      title: 'Make the strap',
      show: 'together',
      words: [
        words`Lay both strips right sides together and sew all round.`,
        ...gapWords(work, ids),
        words`Trim the round ends close and turn the strap through the gap.`,
        ...seen.words,
      ],
      checks: [words`The strap is flat and its ends are round.`],
      pieces: ids,
      seams: group.seams.map(({ seam }) => seam.id),
      marks: marksNamed(work, ids, 'turning gap'),
      rows: seen.rows,
      settings: seamSettings(work, group.seams, seen.set),
      minutes: seamMinutes(group.seams, 6),
    }),
    ...buttonStep(work),
  ];
};

const holeLength = ({ marks }: Piece): number | null => {
  const hole = marks.find(
    (mark): mark is Extract<PieceMark, { kind: 'buttonhole' }> => mark.kind === 'buttonhole',
  );
  return hole === undefined ? null : distance(hole.from, hole.to);
};

const buttonStep = (work: Work): readonly Step[] => {
  const [strap, band] = [pieceOf(work, 'strap'), pieceOf(work, 'band')];
  const buttons = (band?.marks ?? []).filter((mark) => mark.kind === 'button');
  const hole = strap === undefined ? null : holeLength(strap);
  if (hole === null || buttons.length < 2) return [];
  const apart = distance(buttons[0]!.at, buttons[1]!.at);
  return [
    step({
      id: 'buttons',
      phase: 'finish',
      title: 'Buttonholes and buttons',
      show: 'flat',
      words: [
        words`Work a buttonhole ${mm(hole)} long at each end of the strap.`,
        words`Sew the buttons on the band at their marks, ${mm(apart)} apart.`,
        words`Sew through the holes of each button six times and wind the thread below it.`,
      ],
      checks: [words`Buttoned, the strap lies along the visor without a pull.`],
      cautions: [
        words`Cut a buttonhole from both ends to the middle, with a pin across each end.`,
        words`No buttons for a child under three. For an older one sew them through all layers.`,
      ],
      pieces: ['strap', 'band'],
      marks: [...marksNamed(work, ['strap'], 'buttonhole'), ...marksNamed(work, ['band'], 'button')],
      settings: needleSettings(work, ['strap'], { trade: { stitch: '301' } }),
      minutes: [15, 40],
    }),
  ];
};

export const finishSteps = (work: Work): readonly Step[] => [
  ...topButtonStep(work),
  ...tackStep(work),
  lookStep(work),
];

const topButtonStep = (work: Work): readonly Step[] => {
  const piece = pieceOf(work, 'topButton');
  if (piece === undefined) return [];
  return [
    step({
      id: 'topButton',
      phase: 'finish',
      title: 'Cover the button for the top',
      show: 'flat',
      words: [
        words`Sew small hand stitches round the edge of the cover.`,
        ...piece.notes.slice(0, 1),
        words`Sew it to the very top, through all layers.`,
      ],
      checks: [words`It hides the point where the seams meet.`],
      cautions: [words`No button for a child under three: a loose part can choke.`],
      pieces: ['topButton'],
      settings: { trade: { stitch: '200' } },
      minutes: [8, 20],
    }),
  ];
};

const tackStep = (work: Work): readonly Step[] => {
  const top = pieceOf(work, 'top');
  const mark = top?.marks.find((one) => one.kind === 'stretch' && one.name.startsWith('tack'));
  if (mark?.kind !== 'stretch') return [];
  return [
    step({
      id: 'tack',
      phase: 'finish',
      title: 'Tack the front to the visor',
      show: 'cap',
      words: [
        words`Let the front of the top lie forward over the visor.`,
        words`Tack its fold down to the visor by hand, between the marks.`,
      ],
      checks: [words`The stitches do not show and the front lies soft.`],
      cautions: [words`Sew through the cover alone: a needle does not pass the stiffener.`],
      pieces: ['top'],
      marks: [{ piece: 'top', name: mark.name }],
      settings: { trade: { stitch: '200' } },
      minutes: [5, 15],
    }),
  ];
};

const lookStep = (work: Work): Step => {
  const stiff = work.pattern.pieces.some(({ id }) => id === 'visor');
  return step({
    id: 'look',
    phase: 'finish',
    title: 'Press, and try it on',
    show: 'cap',
    words: [
      words`Pull out all basting and cut the threads.`,
      staysDry(work)
        ? words`Shape the crown with your hands: no steam, which would soften it.`
        : words`Steam the crown over a bowl or a rolled towel, and let it dry in shape.`,
      ...cleanWords(work),
    ],
    checks: [
      words`Inside, it is ${mm(work.finishedGirth)} round${afterWash(work)}.`,
      words`The lower edge sits level, a little above the brows.`,
    ],
    cautions: [
      words`Look for pins before you put it on.`,
      ...(stiff ? [words`Keep the iron off the visor.`] : []),
    ],
    minutes: [10, 20],
  });
};

/** How it is kept clean, and whether that makes it smaller the first time. */
const cleanWords = (work: Work): readonly Words[] => {
  if (hasBuckram(work)) return [words`Wipe the cap clean. Buckram loses its shape when it gets wet.`];
  if (staysDry(work)) return [words`Wipe the cap clean: a stiff crown does not bear a wash.`];
  const smaller = cutLarger(work).length > 0;
  const care = careOf(work);
  if (care === 'wash')
    return [
      ...(smaller ? [words`Wash it once before you judge the fit: the first wash makes it smaller.`] : []),
      words`Wash the cap as gently as its most tender cloth needs.`,
    ];
  return [
    ...(smaller ? [words`The first steaming makes it smaller: judge the fit when it is dry.`] : []),
    care === 'steam'
      ? words`Do not wash it: brush it, and take spots off with a damp sponge.`
      : words`Do not wash it: a dry cleaner knows what it bears.`,
  ];
};
