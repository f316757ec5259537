import { words } from '../words.ts';
import { pressWords } from './care.ts';
import type { Sort } from './sort.ts';
import { type Phase, phases, type Step, type Thing } from './step.ts';
import { backStrapSteps, bandTopSteps, elasticCasingSteps, ringSteps, tieSteps } from './steps/band.ts';
import { brimEdgeSteps, brimInnerSteps, brimSideSteps } from './steps/brim.ts';
import { casingOnSteps } from './steps/casing.ts';
import { brimEdgeLastSteps, facingSteps, lowerEdgeSteps, turnSteps } from './steps/close.ts';
import { goreSteps, sideSteps, tipSteps } from './steps/crown.ts';
import { bindingSteps, eyeletSteps, neatenSteps, stemSteps, tapeSteps } from './steps/crown-extras.ts';
import { finishSteps, strapSteps } from './steps/finish.ts';
import { interlineSteps } from './steps/interline.ts';
import { brimOnSteps, innerBandOnSteps, liningInSteps, otherSteps, visorOnSteps } from './steps/join.ts';
import { prepareSteps } from './steps/prepare.ts';
import { sweatbandOnSteps } from './steps/sweatband.ts';
import { visorEdgeSteps } from './steps/visor.ts';
import { notionsFor, toolsFor } from './things.ts';
import { type Group, groupsOf, type Work } from './work.ts';

/** The order of work for one cap. */
export interface Guide {
  readonly steps: readonly Step[];
  readonly tools: readonly Thing[];
  readonly notions: readonly Thing[];
  /** From a quick hand to a careful one, minutes: our own estimate. */
  readonly minutes: readonly [number, number];
}

type Rule = (work: Work, group: Group) => readonly Step[];

/** What is said of each sort of seam. */
const rules: Readonly<Record<Sort, Rule>> = {
  visorEdge: visorEdgeSteps,
  brimSide: brimSideSteps,
  brimEdge: brimEdgeSteps,
  brimEdgeLast: brimEdgeLastSteps,
  brimInner: brimInnerSteps,
  tip: tipSteps,
  gore: goreSteps,
  side: sideSteps,
  binding: bindingSteps,
  bandBack: ringSteps,
  bandTop: bandTopSteps,
  liningTip: tipSteps,
  liningGore: goreSteps,
  liningSide: sideSteps,
  innerBandBack: ringSteps,
  innerBandTop: bandTopSteps,
  sweatbandBack: ringSteps,
  casingBack: ringSteps,
  visorOn: visorOnSteps,
  brimOn: brimOnSteps,
  innerBrimOn: brimOnSteps,
  liningIn: liningInSteps,
  innerBandOn: innerBandOnSteps,
  sweatbandOn: sweatbandOnSteps,
  casingOn: casingOnSteps,
  strapEdge: strapSteps,
  backStrapEdge: backStrapSteps,
  tieEdge: tieSteps,
  other: otherSteps,
};

type Extra = (work: Work) => readonly Step[];
const none: Extra = () => [];

/** What no seam asks for, before and after the seams of a phase. */
const around: Readonly<Record<Phase, readonly [Extra, Extra]>> = {
  prepare: [prepareSteps, none],
  interline: [interlineSteps, none],
  visor: [none, none],
  crown: [
    (work) => [...neatenSteps(work), ...eyeletSteps(work)],
    (work) => [...tapeSteps(work), ...stemSteps(work)],
  ],
  band: [none, elasticCasingSteps],
  lining: [none, none],
  join: [none, none],
  close: [none, (work) => [...closedBefore(work), ...facingSteps(work), ...lowerEdgeSteps(work)]],
  finish: [none, finishSteps],
};

/** A reversible hat is turned as soon as its brims are sewn; all else after its lower edge. */
const closedBefore: Extra = (work) =>
  groupsOf(work).some(({ sort }) => sort === 'brimEdgeLast') ? [] : turnSteps(work);

/** The steps of a cap in order, and what they take. A step that its wishes make needless is not among them. */
export const guideOf = (work: Work): Guide => {
  const groups = groupsOf(work);
  const written = phases.flatMap((phase) => {
    const [before, after] = around[phase];
    const sewn = groups.filter((group) => group.phase === phase);
    return [...before(work), ...sewn.flatMap((group) => rules[group.sort](work, group)), ...after(work)];
  });
  const steps = withPressing(work, withFirstSeam(written));
  return {
    steps,
    tools: toolsFor(work, steps),
    notions: notionsFor(work),
    minutes: [sum(steps.map(({ minutes }) => minutes[0])), sum(steps.map(({ minutes }) => minutes[1]))],
  };
};

/** What holds for every seam is said at the first. */
const withFirstSeam = (steps: readonly Step[]): readonly Step[] => {
  const first = steps.findIndex(({ seams }) => seams.length > 0);
  return steps.map((step, i) =>
    i !== first
      ? step
      : {
          ...step,
          words: [...step.words, words`Start and end each seam with a few stitches back.`],
          cautions: [...step.cautions, words`Take each pin out before the needle comes to it.`],
        },
  );
};

/** What holds for every pressing is said where an iron is first at hand. */
const withPressing = (work: Work, steps: readonly Step[]): readonly Step[] => {
  const first = steps.findIndex(({ id, phase }) => id === 'wash' || phase !== 'prepare');
  return steps.map((step, i) =>
    i !== first ? step : { ...step, words: [...step.words, ...pressWords(work)] },
  );
};

const sum = (all: readonly number[]): number => all.reduce((a, b) => a + b, 0);
