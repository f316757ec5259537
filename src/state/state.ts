import type { Spec } from '../design/spec.ts';
import type { FieldId } from './field.ts';
import type { Stage } from './stage.ts';
import type { Typed } from './typed.ts';
import type { WornWish } from './worn-wish.ts';

export type Theme = 'system' | 'light' | 'dark';

/** Which reckoning lies open beside the table: that of the inside girth, of a fact of the draft, of all seams or of a piece. */
export type Detail = 'inside' | `fact.${string}` | 'seams' | 'piece';

export interface Studio {
  /** What the user asks for, even where it cannot be sewn. */
  readonly wish: Spec;
  /** The last wish that could be drafted: what lies on the table. */
  readonly good: Spec;
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
  /** The steps of the sewing that are done, by style and step: kept with the cap, and no step of undo. */
  readonly ticks: readonly string[];
  /** The field being changed right now, and what lay on the table before: one drag is one step of undo. */
  readonly moving: { readonly field: FieldId; readonly from: Spec } | null;
  /** A calm word to the user about something that happened outside their work. */
  readonly notice: string | null;
}
