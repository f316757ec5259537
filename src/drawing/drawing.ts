import type { Box } from '../geometry/box.ts';
import type { Path } from '../geometry/path.ts';
import type { Point } from '../geometry/point.ts';
import type { Cut } from '../pattern/piece.ts';
import type { LabelWords } from './label-words.ts';

/** What a line is for. Weight, dash and colour follow from it, on the screen and on paper alike. */
export type LineRole =
  | 'cut'
  | 'stitch'
  | 'row'
  | 'fold'
  | 'grain'
  | 'notch'
  | 'centre'
  | 'mark'
  | 'sew'
  | 'bare'
  | 'dimension'
  | 'sheet'
  | 'join';

/** What a line is coloured with where there is colour: ink, or one of the two chalks. Never the only difference. */
export type Tone = 'ink' | 'chalk' | 'madder';

export interface LineMark {
  readonly kind: 'line';
  readonly role: LineRole;
  readonly path: Path;
  /** Filled with the line's colour: arrowheads and notches. */
  readonly filled?: boolean;
  /** A closed line that hides what was drawn before it: one layer upon another. */
  readonly ground?: boolean;
  /** Set where this one line differs from the tone of its role. */
  readonly tone?: Tone;
}

export type TextRole = 'title' | 'label' | 'dimension' | 'sheet' | 'note';

/** Lines of text around a point: x grows along the text, the block is centred on the point vertically. */
export interface TextMark {
  readonly kind: 'text';
  readonly role: TextRole;
  readonly at: Point;
  readonly lines: readonly string[];
  /** Height of an em, mm. */
  readonly size: number;
  readonly align: 'start' | 'middle' | 'end';
  /** Radians, + counter-clockwise. */
  readonly angle: number;
}

export type Mark = LineMark | TextMark;

/** One piece, drawn: its marks, and the shape that no other piece may cover (its cut line, or stitch line where there is none). */
export interface PieceDrawing {
  readonly id: string;
  readonly name: string;
  readonly marks: readonly Mark[];
  readonly silhouette: Path;
  readonly bounds: Box;
  /** What its label says, should it have to be set anew, and the closed line within which it had better stand. */
  readonly label?: { readonly words: LabelWords; readonly within: Path };
  /** How many to cut, and whether the drawing is the half that lies on the fold. */
  readonly cuts?: readonly Cut[];
  readonly onFold?: boolean;
  /** A long straight piece, such as a band, that lies in a row of its own. */
  readonly strip?: boolean;
}
