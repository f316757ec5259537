import { formatFraction, MM_PER_INCH } from '../units.ts';
import { type Words, words } from '../words.ts';

/** Hat sizes by the rules that published tables follow. 'eu' is the girth in cm; 'french' are points. */
export type HatSystem = 'eu' | 'uk' | 'us' | 'french';

export interface HatSize {
  readonly system: HatSystem;
  readonly value: number;
  /** As it stands in a hat: "57", "7 1/8", "4 1/2". */
  readonly label: string;
  /** The girth in mm that the size stands for. */
  readonly girth: number;
}

interface Rule {
  readonly least: number;
  readonly most: number;
  readonly step: number;
  /** The size of a girth, both unrounded. */
  readonly ofGirth: (girth: number) => number;
  readonly girthOf: (value: number) => number;
}

/** A girth over a mark by less than this (mm) is at the mark: a tape shows no less. */
const TAPE = 0.5;

const wholeCm = (girth: number): number => Math.ceil((girth - TAPE) / 10);
const toEighth = (n: number): number => Math.round(n * 8) / 8;

/** Size in inches of a round opening of that girth in mm: girth / π. */
export const diameterInches = (girth: number): number => girth / MM_PER_INCH / Math.PI;
const girthOfDiameter = (diameter: number): number => diameter * Math.PI * MM_PER_INCH;

/**
 * The rules: EU, the girth in cm, taken up to the next whole one; US, the girth in inches by π, to the nearest
 * eighth; UK, an eighth less than US (encyclopaedia article "Hat", through stored copies); French points,
 * (cm - 47) / 2 (ours, from the tables that print them). Each scale runs as far as published tables go: 40 to 66 cm,
 * points from 47 cm. How trade tables agree with them is tested table by table.
 */
const RULES: Readonly<Record<HatSystem, Rule>> = {
  eu: { least: 40, most: 66, step: 1, ofGirth: wholeCm, girthOf: (cm) => cm * 10 },
  uk: {
    least: 4.875,
    most: 8.125,
    step: 0.125,
    ofGirth: (girth) => toEighth(diameterInches(girth)) - 1 / 8,
    girthOf: (value) => girthOfDiameter(value + 1 / 8),
  },
  us: {
    least: 5,
    most: 8.25,
    step: 0.125,
    ofGirth: (girth) => toEighth(diameterInches(girth)),
    girthOf: girthOfDiameter,
  },
  french: {
    least: 0,
    most: 9.5,
    step: 0.5,
    ofGirth: (girth) => (wholeCm(girth) - 47) / 2,
    girthOf: (points) => (points * 2 + 47) * 10,
  },
};

/** The girth in mm that a size stands for: the head's own, without ease. */
export const girthOfHatSize = (value: number, system: HatSystem): number => RULES[system].girthOf(value);

const sizeOf = (system: HatSystem, value: number): HatSize => ({
  system,
  value,
  label: formatFraction(value, 8),
  girth: girthOfHatSize(value, system),
});

/** The size of a girth in mm; null where the scale does not reach. */
export const hatSize = (girth: number, system: HatSystem): HatSize | null => {
  const { least, most, ofGirth } = RULES[system];
  const value = ofGirth(girth);
  return value >= least && value <= most ? sizeOf(system, value) : null;
};

/** All sizes of a scale, the smallest first. */
export const hatSizes = (system: HatSystem): readonly HatSize[] => {
  const { least, most, step } = RULES[system];
  return Array.from({ length: Math.round((most - least) / step) + 1 }, (_, i) =>
    sizeOf(system, least + i * step),
  );
};

/** Said beside a girth that comes from a size. One step of a size is a centimetre of girth (1/8 in × π = 9.97 mm). */
export const SIZE_IS_AN_ESTIMATE: Words = words`A girth from a hat size is an estimate: makers differ, and a size is a centimetre wide. Measure the head when you can.`;
