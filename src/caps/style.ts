import type { Pattern } from '../pattern/pattern.ts';
import type { Cloth, Figure } from '../pattern/piece.ts';
import type { Problem } from '../pattern/problem.ts';
import type { Words } from '../words.ts';
import type { Form } from './form.ts';
import type { ParameterTable, Values } from './parameter.ts';

/** What the thickness of the cloth adds to the finished girth, mm, along the middle of each layer. */
export interface Turn {
  readonly shell: number;
  /** Of what lies against the head. */
  readonly inner: number;
  /** Of the lining, where a sweatband lies inside it: otherwise it is what lies against the head. */
  readonly lining: number;
  /** One layer of the outer cloth, mm. */
  readonly outer: number;
}

/** What a style needs to know of a head: girth and the arc over the top from edge to edge in mm, breadth over length. */
export interface Head {
  readonly girth: number;
  readonly ratio: number;
  readonly arc: number;
  /** Cloth of no thickness where left out. */
  readonly turn?: Turn;
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

/** A number worth having in plain sight, and how it comes about. */
export interface Fact {
  readonly id: string;
  /** Beside the figure: one word or two. */
  readonly name: string;
  readonly figure: Words;
  /** Over the reckoning. */
  readonly title: string;
  readonly reckoning: readonly Figure[];
}

/** One cap, drafted. Lengths in mm. */
export interface CapDraft {
  /** Inside the finished cap: head girth and ease. */
  readonly finishedGirth: number;
  readonly facts: readonly Fact[];
  readonly insert: InsertFit | null;
  readonly pattern: Pattern;
}

/** A mix of values to start from: the values it does not name stay as they are. */
export interface Start<V> {
  readonly name: string;
  readonly values: Partial<V>;
}

/** How the lining of a style stands within its shell. A method, as the rules of a style are, and for the same reason. */
export interface StyleLining<V = Values> {
  /** The strips that the lining's pieces are rolled out from; none where there is no lining. */
  form(values: V, head: Head): Form;
}

/**
 * A style of cap: its names, its parameters and the rules that turn them into a form and its pieces.
 * The rules are methods, so that a style of its own values can stand among all styles; the decoder and the form
 * give it one value of the right type for each row of its table.
 */
export interface Style<V = Values> {
  readonly id: string;
  readonly name: string;
  /** The trade's other names for it. */
  readonly alsoCalled: readonly string[];
  /** What tells it from its neighbours, in one sentence. */
  readonly tells: string;
  /** Where its cloth is to be steamed or stretched, for a style whose usual draft does not roll flat by itself. */
  readonly coaxing?: string;
  readonly parameters: ParameterTable;
  readonly starts: readonly Start<V>[];
  /** What cannot be sewn as wished. Empty when `draft` and `form` may be called. */
  problems(values: V, head: Head): readonly Problem[];
  /** The cloths inside the shell at its lower edge, from the head outwards, interlining included. */
  inside(values: V): readonly Cloth[];
  draft(values: V, head: Head): CapDraft;
  /** The shell in space: the same strips that its pieces are rolled out from. */
  form(values: V, head: Head): Form;
  /** How its lining stands within, where it can have one; see `liningOf`. */
  readonly lining?: StyleLining<V>;
}
