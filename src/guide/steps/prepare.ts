import { mayTurn } from '../../cloth/rotations-on.ts';
import type { Cloth } from '../../pattern/piece.ts';
import { ratio, type Words, words } from '../../words.ts';
import { marksOf } from '../marks.ts';
import { listed, needleSettings, spoken } from '../said.ts';
import { type Step, step } from '../step.ts';
import { STITCH } from '../stitches.ts';
import { cutLarger } from '../while-sewn.ts';
import { clothsCut, type Work } from '../work.ts';

/** Wash, cut and mark, and hold what would stretch. */
export const prepareSteps = (work: Work): readonly Step[] => [
  ...washStep(work),
  cutStep(work),
  ...markStep(work),
  ...holdStep(work),
];

/** Cloth washed before needs no wash, and cloth whose pieces are cut larger must not have one. */
const washStep = (work: Work): readonly Step[] => {
  const sewn = clothsCut(work).filter((cloth) => cloth === 'outer' || cloth === 'lining');
  const raw = sewn.filter((name) => !work.cloths[name].washed);
  if (raw.length === 0) return [];
  const larger = cutLarger(work);
  const toWash = raw.filter((name) => !larger.includes(name));
  return [
    step({
      id: 'wash',
      phase: 'prepare',
      title: toWash.length > 0 ? 'Wash and press the cloth' : 'Press the cloth',
      show: 'cloth',
      words: [
        ...(toWash.length > 0
          ? [
              words`Wash and dry the ${listed(toWash.map(clothWord))} as you will wash the cap.`,
              words`It may shrink now, so that the cap will not.`,
            ]
          : []),
        ...larger.map(
          (name): Words =>
            words`Do not wash the ${clothWord(name)} yet: its pieces are cut larger by what the first wash takes, ${ratio(work.cloths[name].shrinkLength)} along the grain and ${ratio(work.cloths[name].shrinkWidth)} across.`,
        ),
        ...(larger.length > 0
          ? [words`Lengths in these steps are those after that wash, but where a step says now.`]
          : []),
        words`Press it flat along the grain.`,
      ],
      checks: [words`The cloth lies flat and its grain is straight.`],
      cautions: [words`The iron is hot and steam scalds. Try the heat on a scrap first.`],
      minutes: toWash.length > 0 ? [15, 30] : [5, 10],
    }),
  ];
};

const clothWord = (cloth: Cloth): string => (cloth === 'outer' ? 'outer cloth' : cloth);

const cutStep = (work: Work): Step => {
  const { pieces } = work.pattern;
  const cut = pieces.filter(({ cuts }) => cuts.length > 0);
  const nap = clothsCut(work).filter((cloth) => work.cloths[cloth].nap);
  const turned = clothsCut(work).filter((cloth) => mayTurn(work.cloths[cloth]));
  const stiff = cut.some(({ cuts }) => cuts.some(({ cloth }) => cloth === 'stiffener'));
  return step({
    id: 'cut',
    phase: 'prepare',
    title: 'Cut the pieces',
    show: 'cut',
    words: [
      words`Lay each piece with its arrow along the grain.`,
      ...(turned.length > 0
        ? [words`The ${listed(turned.map(clothWord))} may lie another way: see the cutting lay.`]
        : []),
      words`Cut as many of each as it says, on the outer line.`,
      ...nap.map((cloth): Words => words`Lay all of the ${clothWord(cloth)} the same way up: it has a nap.`),
      ...(cut.some(({ cuts }) => cuts.some(({ mirrored = 0 }) => mirrored > 0))
        ? [words`For a mirrored piece, turn the paper face down.`]
        : []),
      ...(stiff ? [words`Draw round the stiffener and cut it out with strong shears.`] : []),
    ],
    checks: [words`Count the pieces against the list.`],
    cautions: [
      words`Cut away from your hand. Close a rotary cutter each time you put it down.`,
      ...(stiff ? [words`A craft knife slips on stiff sheet: use a metal rule and light strokes.`] : []),
    ],
    pieces: cut.map(({ id }) => id),
    minutes: [5 + 3 * cut.length, 10 + 5 * cut.length],
  });
};

const markStep = (work: Work): readonly Step[] => {
  const marked = work.pattern.pieces.filter(({ notches, marks }) => notches.length > 0 || marks.length > 0);
  if (marked.length === 0) return [];
  const marks = marked.flatMap(marksOf);
  const lines = [...new Set(marks.filter(({ mark }) => mark).map(({ name }) => plural(name)))];
  return [
    step({
      id: 'mark',
      phase: 'prepare',
      title: 'Mark the notches',
      show: 'flat',
      words: [
        words`Snip each notch half way into the seam allowance, and no deeper.`,
        words`One notch is the front or a side. Two are the back.`,
        ...(lines.length > 0 ? [words`Mark the ${listed(lines)} with chalk on the wrong side.`] : []),
      ],
      checks: [words`Each notch has its partner on the piece it is sewn to.`],
      pieces: marked.map(({ id }) => id),
      marks: marks.map(({ piece, name }) => ({ piece, name })),
      minutes: [5, 5 + 2 * marked.length],
    }),
  ];
};

const plural = (name: string): string =>
  ({
    button: 'button places',
    buttonhole: 'buttonholes',
    eyelet: 'eyelets',
    pleat: 'pleats',
    gather: 'stretch to gather',
    tie: 'stretch for the tie',
    elastic: 'stretch for the elastic',
    'tack down': 'stretches to tack',
  })[name] ?? name;

/** A staystitch lies so far out in the allowance, mm: close to the stitch line. */
const STAY = 1;

/** Edges that bow inwards stretch when they are handled. */
const holdStep = (work: Work): readonly Step[] => {
  const inward = work.pattern.pieces.filter(({ outline }) =>
    outline.some(({ name, kind }) => name === 'inner' && kind !== 'none'),
  );
  if (inward.length === 0) return [];
  const ids = inward.map(({ id }) => id);
  return [
    step({
      id: 'staystitch',
      phase: 'prepare',
      title: 'Hold the curved edges',
      show: 'flat',
      words: [
        words`Staystitch the inner edge of the ${listed(inward.map(({ name }) => spoken(name)))} inside the allowance, close to the stitch line.`,
        words`Do not pull: let the machine feed the cloth.`,
      ],
      checks: [words`The edge still lies on the paper piece, no longer than it was.`],
      pieces: ids,
      held: ids.map((piece) => ({ piece, edge: 'inner', at: -STAY })),
      settings: needleSettings(work, ids, { stitch: STITCH.reinforced, trade: { stitch: '301' } }),
      minutes: [4, 10],
    }),
  ];
};
