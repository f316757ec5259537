import type { Pattern } from '../pattern/pattern.ts';
import type { Problem } from '../pattern/problem.ts';
import type { ParameterTable } from './parameter.ts';

/** What a style needs to know of a head: girth in mm, breadth over length. */
export interface Head {
  readonly girth: number;
  readonly ratio: number;
}

/** What the app can say of a visor made for a bought insert. Lengths in mm. */
export interface InsertFit {
  /** The insert's own inner edge. */
  readonly innerEdge: number;
  /** The stretch of band that its cover is sewn to. */
  readonly stretch: number;
  /** The inner edge less the stretch. */
  readonly difference: number;
  /** The slope the insert takes on this head, radians below level; null where it is bowed more than the head. */
  readonly drop: number | null;
}

/** One cap, drafted. Lengths in mm. */
export interface CapDraft {
  /** Inside the finished cap: head girth and ease. */
  readonly finishedGirth: number;
  readonly crownGirth: number;
  readonly tip: { readonly length: number; readonly breadth: number };
  readonly visor: { readonly innerEdge: number; readonly insert: InsertFit | null };
  readonly pattern: Pattern;
}

/** A style of cap: its names, its parameters and the rule that turns them into pieces. */
export interface Style<Values> {
  readonly id: string;
  readonly name: string;
  /** The trade's other names for it. */
  readonly alsoCalled: readonly string[];
  readonly parameters: ParameterTable;
  /** What cannot be sewn as wished. Empty when `draft` may be called. */
  readonly problems: (values: Values, head: Head) => readonly Problem[];
  readonly draft: (values: Values, head: Head) => CapDraft;
}
