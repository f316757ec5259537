import type { Form } from '../../caps/form.ts';
import type { StitchRow } from '../../pattern/piece.ts';
import type { Mark } from '../drawing.ts';
import type { Size } from './size.ts';

/** Marks in a box whose lower left corner is the origin, mm on paper. */
export interface Picture extends Size {
  readonly marks: readonly Mark[];
}

/** What a drawing of a step shows. The pieces' own lines, drawn small. */
export interface Shown {
  readonly show: 'cloth' | 'cut' | 'body' | 'together' | 'turned' | 'flat' | 'hem' | 'cap';
  readonly pieces: readonly string[];
  readonly seams: readonly string[];
  /** Which sides of two pieces lie on each other. */
  readonly facing: 'right' | 'wrong';
  /** Which side of the seam lies on the other; null where the drawing may choose. */
  readonly onTop: 'a' | 'b' | null;
  readonly press: 'open' | { readonly towards: string } | null;
  readonly topstitched: boolean;
  /** Rows of stitches that are sewn on the pieces. */
  readonly rows: readonly (StitchRow & { readonly piece: string })[];
  /** Copies of pieces, as 'gore 2': those that the step sews, and those sewn to something by its end. */
  readonly news: readonly string[];
  readonly joined: readonly string[];
  readonly form: Form;
}
