import type { HeadSpec, Spec } from '../design/spec.ts';
import type { FieldId } from './field.ts';
import type { LayChoice } from './lay-choice.ts';
import type { Shelved } from './shelved.ts';
import type { Stage } from './stage.ts';
import type { Typed } from './typed.ts';
import type { WornWish } from './worn-wish.ts';

export type Theme = 'system' | 'light' | 'dark';

/** What lies open beside the table: the reckoning of the inside girth, of a fact of the draft, of all seams or of a piece; or the shelf. */
export type Detail = 'inside' | `fact.${string}` | 'seams' | 'piece' | 'shelf';

/** The steps of the sewing that are done, of each cap by its number. */
export type Ticks = Readonly<Record<number, readonly string[]>>;

export interface Studio {
  /** What the user asks for, even where it cannot be sewn. */
  readonly wish: Spec;
  /** The last wish that could be drafted: what lies on the table, is laid, printed and kept. */
  readonly good: Spec;
  /** The wish with a change that is only tried on, shown in the place of `good` until anything else is wished. */
  readonly trial: Spec | null;
  /** The number of the cap on the table. */
  readonly capId: number;
  /** The other caps that are kept. The one on the table is not among them. */
  readonly shelf: readonly Shelved[];
  /** The head cards, no two of one name. */
  readonly heads: readonly HeadSpec[];
  /** Texts as typed, by field. */
  readonly typed: Readonly<Record<string, Typed>>;
  readonly stage: Stage;
  /** The piece chosen, and the piece pointed at, by id. */
  readonly chosen: string | null;
  readonly lit: string | null;
  /** The seam pointed at, by id. */
  readonly litSeam: string | null;
  readonly detail: Detail | null;
  readonly theme: Theme;
  readonly worn: WornWish;
  readonly lay: LayChoice;
  /** Kept with the cap, and no step of undo. */
  readonly ticks: Ticks;
  /** The field being changed right now, and what was wished and what lay on the table before: one drag is one step of undo. */
  readonly moving: { readonly field: FieldId; readonly wished: Spec; readonly from: Spec } | null;
  /** A calm word to the user about something that happened outside their work. */
  readonly notice: string | null;
  /** Another tab has kept something since: what is changed here is not kept until the user has chosen between them. */
  readonly elsewhere: boolean;
}
