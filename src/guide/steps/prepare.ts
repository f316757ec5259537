import { STIFFENER_INSIDE } from '../../caps/parts/stiffener-inside.ts';
import type { ClothSpec } from '../../cloth/cloth.ts';
import { kindOf } from '../../cloth/kinds.ts';
import { mayTurn } from '../../cloth/rotations-on.ts';
import { clothsOf } from '../../pattern/cloths-of.ts';
import { mm, ratio, type Words, words } from '../../words.ts';
import { shrinkerOf, staysDry } from '../care.ts';
import { marksOf } from '../marks.ts';
import { clothWord, listed, needleSettings, spoken } from '../said.ts';
import { type Step, step } from '../step.ts';
import { STITCH } from '../stitches.ts';
import { cutLarger } from '../while-sewn.ts';
import { clothsWorn, type Work } from '../work.ts';
import { isCoveredBy, isFusedUnlike } from './interline.ts';

/** Wash, cut and mark, and hold what would stretch. */
export const prepareSteps = (work: Work): readonly Step[] => [
  ...washStep(work),
  cutStep(work),
  ...markStep(work),
  ...holdStep(work),
];

/** Cloth washed before needs no wash, and cloth whose pieces are cut larger must not have one. What is not washed is steamed. */
const washStep = (work: Work): readonly Step[] => {
  const raw = clothsWorn(work).filter((cloth) => !work.cloths[cloth].washed);
  if (raw.length === 0) return [];
  const larger = cutLarger(work);
  const now = raw.filter((name) => !larger.includes(name));
  const shrinker = shrinkerOf(work);
  const verb = shrinker === 'wash' ? 'wash' : 'steam';
  const grained = raw.filter((name) => hasGrain(work.cloths[name]));
  return [
    step({
      id: 'wash',
      phase: 'prepare',
      title:
        now.length === 0 ? 'Press the cloth' : `${verb === 'wash' ? 'Wash' : 'Steam'} and press the cloth`,
      show: 'cloth',
      words: [
        ...(now.length > 0
          ? [
              verb === 'wash'
                ? words`Wash and dry the ${listed(now.map(clothWord))} as you will wash the cap.`
                : words`Steam the ${listed(now.map(clothWord))} well from the wrong side, and let it dry.`,
              words`It may shrink now, so that the cap will not.`,
            ]
          : []),
        ...larger.map(
          (name): Words =>
            words`Do not ${verb} the ${clothWord(name)} yet: its pieces are cut larger by what the first ${shrinker} takes, ${ratio(work.cloths[name].shrinkLength)} ${hasGrain(work.cloths[name]) ? 'along the grain' : 'in length'} and ${ratio(work.cloths[name].shrinkWidth)} across.`,
        ),
        ...(larger.length > 0
          ? [words`Lengths in these steps are those after that ${shrinker}, but where a step says now.`]
          : []),
        ...(larger.length > 0 && verb === 'steam' ? [words`Until then press with a dry iron.`] : []),
        grained.length > 0 ? words`Press it flat along the grain.` : words`Press it flat.`,
      ],
      checks: [
        grained.length === 0
          ? words`The cloth lies flat.`
          : words`The cloth lies flat and ${grained.length === raw.length ? 'its grain' : `the grain of the ${listed(grained.map(clothWord))}`} is straight.`,
      ],
      cautions: [
        ...(larger.length > 0 ? shrinkFirstWords(work) : []),
        words`The iron is hot and steam scalds. Try the heat on a scrap first.`,
      ],
      minutes: now.length > 0 ? [15, 30] : [5, 10],
    }),
  ];
};

const hasGrain = (cloth: ClothSpec): boolean => kindOf(cloth)?.grain ?? true;

/** Why the cloth had better shrink before it is cut. */
const shrinkFirstWords = (work: Work): readonly Words[] => {
  const why = staysDry(work)
    ? words`A cap with a stiff crown or buckram is never washed, so that it stays too large.`
    : isFusedUnlike(work)
      ? words`Fused to cloth that has still to shrink, the interlining bubbles.`
      : null;
  if (why === null) return [];
  return [words`${why} Better shrink the cloth now: choose “Washed before cutting” on the Cloth stage.`];
};

const cutStep = (work: Work): Step => {
  const { pieces } = work.pattern;
  const cut = pieces.filter(({ cuts }) => cuts.length > 0);
  const nap = clothsOf(work.pattern.pieces).filter((cloth) => work.cloths[cloth].nap);
  const turned = clothsOf(work.pattern.pieces).filter((cloth) => mayTurn(work.cloths[cloth]));
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
      ...clothsOf(work.pattern.pieces)
        .filter((cloth) => !hasGrain(work.cloths[cloth]))
        .map((cloth): Words => words`The ${clothWord(cloth)} has no grain: lay the arrows along its length.`),
      words`Cut as many of each as it says, on the outer line.`,
      ...insideTheLine(work),
      ...nap.map(
        (cloth): Words =>
          words`Lay all of the ${clothWord(cloth)} the same way up: ${kindOf(work.cloths[cloth])?.nap ? 'it has a nap' : 'its face has one way up'}.`,
      ),
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

/** What shares its paper piece with cloth that has allowances has none itself. */
const insideTheLine = ({ pattern, cutting }: Work): readonly Words[] => [
  ...(cutting.pieces.some((piece) => isCoveredBy(piece, 'interlining'))
    ? [words`Cut the interlining on the stitch line instead, without allowance.`]
    : []),
  ...(pattern.pieces.some((piece) => isCoveredBy(piece, 'stiffener'))
    ? [
        words`Cut the stiffener ${mm(STIFFENER_INSIDE)} inside the stitch line, so that the needle passes beside it.`,
      ]
    : []),
];

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
