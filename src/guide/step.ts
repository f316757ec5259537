import type { Words } from '../words.ts';
import type { Needle } from './needle.ts';
import type { Row } from './rows.ts';

/** The parts of the work, in the order in which they are done. */
export const phases = [
  'prepare',
  'interline',
  'visor',
  'crown',
  'band',
  'lining',
  'join',
  'close',
  'finish',
] as const;
export type Phase = (typeof phases)[number];

/** How the machine and the iron are set for a step. Lengths in mm. */
export interface Settings {
  /** The machine's stitch. */
  readonly stitch?: number;
  readonly needle?: Needle;
  readonly allowance?: number;
  /** Where the allowances go under the iron: 'open', or towards a piece by id. */
  readonly press?: 'open' | { readonly towards: string };
  /** From the seam or the edge to a row of stitches seen from outside, the nearest of them. */
  readonly topstitch?: number;
  /** What the trade calls it: the stitch by ISO 4915, the seam by the letters of ASTM D6193. */
  readonly trade?: { readonly stitch: '301' | '200'; readonly seam?: 'SS' | 'LS' | 'BS' };
}

/** A notch or a mark that a step goes by, on a piece. */
export interface MarkUse {
  readonly piece: string;
  readonly name: string;
}

/** What the drawing of a step shows besides its pieces and seams. */
export type Show =
  /** Cloth from the bolt. */
  | 'cloth'
  | 'cut'
  | 'body'
  | 'together'
  | 'turned'
  | 'flat'
  /** The lower edge from its end, what is inside turned in. */
  | 'hem'
  /** The cap as far as it is sewn, or all of it. */
  | 'cap';

/** One step of the work, for one cap. Every number in it is that of the draft, or a setting. */
export interface Step {
  /** The same for the same work, whatever the measures: ticks are kept by it. */
  readonly id: string;
  readonly phase: Phase;
  readonly title: string;
  /** What to do, one sentence each. */
  readonly words: readonly Words[];
  /** How to see that it came right. */
  readonly checks: readonly Words[];
  readonly cautions: readonly Words[];
  /** Ids of pieces and of seams. */
  readonly pieces: readonly string[];
  readonly seams: readonly string[];
  readonly marks: readonly MarkUse[];
  /** Rows of stitches that the pieces show and that this step sews. */
  readonly rows: readonly Row[];
  /** Rows that only hold for a while or hide in the allowance: the drawing shows them, the pieces do not. */
  readonly held: readonly Row[];
  readonly settings: Settings;
  readonly show: Show;
  /** Which sides of two pieces lie on each other. */
  readonly facing: 'right' | 'wrong';
  /** Which side of its seam the words lay on the other; null where they do not say. */
  readonly onTop: 'a' | 'b' | null;
  /** Our own estimate, minutes, for a quick hand and for a careful one. */
  readonly minutes: readonly [number, number];
}

/** A step as its rule writes it: what is not said is nothing. */
export type StepWords = Pick<Step, 'id' | 'phase' | 'title' | 'words' | 'show'> & Partial<Step>;

export const step = (said: StepWords): Step => ({
  checks: [],
  cautions: [],
  pieces: [],
  seams: [],
  marks: [],
  rows: [],
  held: [],
  settings: {},
  facing: 'right',
  onTop: null,
  minutes: [4, 8],
  ...said,
});

/** A tool or a notion to have at hand. */
export interface Thing {
  readonly name: string;
  readonly words?: Words;
}
