import { mm, type Words, words } from '../../words.ts';
import { markedLength } from '../marked-length.ts';
import {
  basteSettings,
  girthCheck,
  lengthCheck,
  marksNamed,
  matchWords,
  nameOf,
  needleSettings,
  notchesIn,
  seamMinutes,
  seamSettings,
} from '../said.ts';
import { type Step, step } from '../step.ts';
import { EDGE_STITCH, STITCH } from '../stitches.ts';
import { type Group, pieceOf, piecesIn, type Work } from '../work.ts';
import { hasPart } from './join.ts';
import { rowsStep, trimWords } from './visor.ts';

/** A sweatband or a facing is sewn to the lower edge and turned in. */
export const sweatbandOnSteps = (work: Work, group: Group): readonly Step[] => {
  const [report] = group.seams;
  if (report === undefined) return [];
  const ids = piecesIn(group.seams);
  const name = nameOf(work, 'sweatband');
  const strapped = hasPart(ids, 'backStrap') || hasPart(ids, 'elasticCasing');
  const marks = notchesIn(work, group.seams).filter(({ name: n }) => n !== 'visor end');
  const round = group.id === 'lowerEdge';
  return [
    ...(strapped ? [strapStep(work, ids)] : []),
    step({
      id: group.id,
      phase: 'close',
      title: `Sew in the ${name}`,
      show: 'together',
      words: [
        words`Lay the ${name} on the lower edge, right sides together.`,
        ...matchWords(marks),
        ...(strapped
          ? [words`Turn its ends in at the edge of the opening, over the ends of the strap.`]
          : []),
        words`Sew all the way round through all layers.`,
        ...trimWords(work.pattern.allowances.lower),
      ],
      checks: [lengthCheck(report), ...(round ? [girthCheck(work)] : [])],
      pieces: ids,
      seams: [report.seam.id],
      marks,
      settings: seamSettings(work, group.seams),
      minutes: seamMinutes(group.seams, 8),
    }),
    turnInStep(work, name),
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

const turnInStep = (work: Work, name: string): Step => {
  const facing = name === 'facing';
  const visored = work.pattern.pieces.some(({ id }) => id === 'visor');
  return step({
    id: 'turnIn',
    phase: 'close',
    title: `Turn the ${name} in`,
    show: 'cap',
    words: [
      words`Fold the ${name} to the inside and roll the seam a little inwards.`,
      words`Topstitch the lower edge, ${mm(EDGE_STITCH)} in, all the way round.`,
      facing
        ? words`Turn in its free edge and catch it down by hand.`
        : words`Catch its free edge to the lining or the seams by hand, here and there.`,
    ],
    checks: [words`The ${name} lies flat inside and does not show.`],
    cautions: visored ? [words`Turn the wheel by hand where the visor makes the seam thick.`] : [],
    pieces: ['sweatband'],
    settings: needleSettings(work, ['sweatband', ...outerIds(work)], {
      stitch: STITCH.topstitch,
      topstitch: EDGE_STITCH,
      trade: { stitch: '301' },
    }),
    minutes: [10, 30],
  });
};

const outerIds = ({ pattern }: Work): readonly string[] =>
  pattern.pieces.filter(({ cuts }) => cuts.some(({ cloth }) => cloth === 'outer')).map(({ id }) => id);

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
      words: [
        ...(ties ? [words`Hem the short ends of the casing.`] : []),
        words`Lay the casing on the lower edge, right sides together.`,
        ...matchWords(marks),
        words`Sew all the way round.`,
        ...trimWords(work.pattern.allowances.lower),
      ],
      checks: [lengthCheck(report), girthCheck(work)],
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
  return step({
    id: 'drawIn',
    phase: 'close',
    title: ties ? 'Turn the casing in over the ties' : 'Turn the casing in and draw in the elastic',
    show: 'cap',
    words: [
      words`Fold the casing to the inside and turn in its free edge.`,
      ...(ties ? notes : []),
      ties
        ? words`Topstitch the free edge down all round. Keep the ties clear of the needle.`
        : words`Topstitch the free edge down. Leave a gap at the back for the elastic.`,
      ...(ties ? [] : [...notes, words`Sew the gap shut.`]),
    ],
    checks: [ties ? words`The ties slide in the casing.` : words`The back draws in and stretches again.`],
    cautions: ties
      ? [words`No ties on a child’s cap: cords can catch and strangle. Take elastic.`]
      : [words`Some elastic holds latex: ask, if the skin does not bear it.`],
    pieces: ['casing', ...(ties ? ['tie'] : [])],
    marks: marksNamed(work, ['casing'], ties ? 'tie' : 'elastic'),
    settings: needleSettings(work, ['casing'], {
      stitch: STITCH.topstitch,
      topstitch: EDGE_STITCH,
      trade: { stitch: '301' },
    }),
    minutes: [10, 25],
  });
};

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
        ...matchWords(marks),
        words`Sew all the way round the outer edge.`,
        ...trimWords(work.pattern.allowances.brimEdge),
      ],
      checks: [lengthCheck(report)],
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
      show: 'cap',
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
  return [
    step({
      id: 'lowerTopstitch',
      phase: 'close',
      title: 'Topstitch the lower edge',
      show: 'cap',
      words: [
        words`Press the lower edge, the lining rolled a little inwards.`,
        words`Topstitch it all round, ${mm(EDGE_STITCH)} from the edge${visored ? ' and above the visor' : ''}.`,
      ],
      checks: [words`The lining does not peep out.`],
      cautions: visored
        ? ([
            words`Do not press the stiffener: an iron melts plastic.`,
            words`Turn the wheel by hand where the visor makes the seam thick.`,
          ] satisfies readonly Words[])
        : [],
      pieces: ['band', 'liningBand'],
      settings: needleSettings(work, ['band', 'liningBand'], {
        stitch: STITCH.topstitch,
        topstitch: EDGE_STITCH,
        trade: { stitch: '301' },
      }),
      minutes: [6, 15],
    }),
  ];
};
