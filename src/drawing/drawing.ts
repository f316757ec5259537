import type { Box } from '../geometry/box.ts';
import type { Path } from '../geometry/path.ts';
import type { Point } from '../geometry/point.ts';

/** What a line is for. Weight, dash and colour follow from it, on the screen and on paper alike. */
export type LineRole =
  | 'cut'
  | 'stitch'
  | 'fold'
  | 'grain'
  | 'notch'
  | 'centre'
  | 'mark'
  | 'dimension'
  | 'sheet'
  | 'join';

export interface LineMark {
  readonly kind: 'line';
  readonly role: LineRole;
  readonly path: Path;
  /** Filled with the line's colour: arrowheads and notches. */
  readonly filled?: boolean;
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
}
