/** What a page can be told to draw: millimetres, y up. */
export interface Pen {
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  curveTo(x1: number, y1: number, x2: number, y2: number, x: number, y: number): void;
  close(): void;
  stroke(weight: number, dash: readonly number[]): void;
  fill(): void;
  /** Hides with the paper's white what lies inside the path just drawn, and strokes it. */
  cover(weight: number, dash: readonly number[]): void;
  /** Keeps what follows on the page inside the path just drawn. */
  clip(): void;
  /** Stretches what follows on the page about a point. */
  stretch(across: number, up: number, about: { readonly x: number; readonly y: number }): void;
  text(line: TextLine): void;
}

/** One line of text, its start on a point of its baseline. */
export interface TextLine {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  /** Height of an em, mm. */
  readonly size: number;
  readonly bold: boolean;
  /** Radians, + counter-clockwise. */
  readonly angle: number;
}

/** How far texts run in the typeface that the pen has, mm. */
export interface Typeface {
  width(text: string, size: number, bold: boolean): number;
}
