import type { Line, Path } from '../geometry/path.ts';
import type { Point } from '../geometry/point.ts';
import type { Words } from '../words.ts';

/** What a piece can be cut from, in the order it is told in. */
export const allCloths = ['outer', 'lining', 'interlining', 'stiffener'] as const;
export type Cloth = (typeof allCloths)[number];

/** The kinds of seam that can have an allowance of their own. 'hem' is turned in; 'none' is cut on the stitch line. */
export type SeamKind =
  | 'crown'
  | 'gore'
  | 'side'
  | 'band'
  | 'lower'
  | 'visorEdge'
  | 'brimEdge'
  | 'strapEdge'
  | 'hem'
  | 'none';

/** One named stretch of a piece's outline, on the stitch line, counter-clockwise. */
export interface Edge {
  readonly name: string;
  readonly path: Path;
  readonly kind: SeamKind;
}

/** How many to cut from one cloth; `mirrored` of the count are cut face down. */
export interface Cut {
  readonly cloth: Cloth;
  readonly count: number;
  readonly mirrored?: number;
}

/** A notch on an edge, mm along it from its start. One at the front and the sides, two at the back. */
export interface Notch {
  readonly edge: string;
  readonly at: number;
  readonly count: 1 | 2;
  readonly name: string;
}

/** Things to transfer to the cloth besides notches. */
export type PieceMark =
  | {
      readonly kind: 'button';
      readonly at: Point;
      readonly diameter: number;
      readonly name: string;
    }
  | {
      readonly kind: 'buttonhole';
      readonly from: Point;
      readonly to: Point;
      readonly name: string;
    }
  /** A hole for air, worked or pressed in; the diameter is the hole's, mm. */
  | { readonly kind: 'eyelet'; readonly at: Point; readonly diameter: number; readonly name: string }
  | { readonly kind: 'stretch'; readonly path: Path; readonly name: string }
  /** A pleat, folded on one line so that the fold lies on the other; both run from the edge into the piece. */
  | { readonly kind: 'pleat'; readonly fold: Line; readonly place: Line; readonly name: string }
  /** A word written on the piece, its middle at a point. */
  | { readonly kind: 'text'; readonly text: string; readonly at: Point };

/** A row of stitches along an edge, mm inside the stitch line; less than nothing lies in the allowance. */
export interface StitchRow {
  readonly edge: string;
  readonly at: number;
}

/** A measured distance shown on the table: between two points, or along a path. */
export interface Dimension {
  readonly name: string;
  readonly along: Path;
  /** Set where the distance shown is not the path's own length. */
  readonly mm?: number;
}

/** Something bought that goes with a piece: a button, elastic, ribbon. */
export interface Notion {
  readonly name: string;
  /** How many, how long, how wide, as far as that is known. */
  readonly size?: Words;
  /** Bought in place of the piece, which lies along x: as long as that is cut. */
  readonly inPlace?: true;
}

/** One figure of "show the arithmetic": its formula in words, then with the wearer's numbers in it. */
export interface Figure {
  readonly name: string;
  readonly formula: string;
  readonly worked: Words;
}

/**
 * One pattern piece, flat. Its outline is the stitch line: a closed, counter-clockwise chain of named edges.
 * A piece marked `foldable` is symmetric about x = 0 and can be cut from half a pattern on the fold.
 */
export interface Piece {
  readonly id: string;
  readonly name: string;
  readonly cuts: readonly Cut[];
  readonly outline: readonly Edge[];
  readonly foldable: boolean;
  readonly grain: readonly [Point, Point];
  /** The row of the style's table that turns the grain by a quarter, where the piece can be cut either way. */
  readonly grainBy?: string;
  readonly notches: readonly Notch[];
  readonly centreLines: readonly Path[];
  readonly marks: readonly PieceMark[];
  readonly labelAt: Point;
  readonly dimensions: readonly Dimension[];
  readonly figures: readonly Figure[];
  readonly notes: readonly Words[];
  readonly notions?: readonly Notion[];
  /** Rows that are sewn later: they follow from the seams and the cloth, once a piece is to be seen. */
  readonly rows?: readonly StitchRow[];
}
