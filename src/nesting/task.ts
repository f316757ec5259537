import type { Point } from '../geometry/point.ts';

/** An outline to be laid: a closed ring, counter-clockwise, mm about its own origin; a mirrored piece comes mirrored. */
export interface NestPiece {
  readonly id: string;
  readonly polygon: readonly Point[];
  /** The turns it may be laid at, radians counter-clockwise about its origin. */
  readonly rotations: readonly number[];
}

/** Where a piece lies: turned about its own origin, radians, then shifted by (x, y), mm in the frame of its container. */
export interface Placement {
  readonly piece: string;
  /** Which area it lies in, by its place in the list; 0 on a strip. */
  readonly container: number;
  readonly rotation: number;
  readonly x: number;
  readonly y: number;
}

/** A strip along x from 0, y from 0 to its width, mm; its length is a bound, or null where there is no end. */
export interface Strip {
  readonly kind: 'strip';
  readonly width: number;
  readonly length: number | null;
}

/** Room of any shape: a ring, and rings within it where nothing may lie. Either way round. */
export interface Area {
  readonly outline: readonly Point[];
  readonly flaws: readonly (readonly Point[])[];
}

export interface Areas {
  readonly kind: 'areas';
  readonly areas: readonly Area[];
}

export interface Task {
  readonly ground: Strip | Areas;
  readonly pieces: readonly NestPiece[];
  /** Kept between any two pieces, mm. */
  readonly spacing: number;
  /** Kept from the two long sides of a strip, from the whole outline of an area and from its flaws, mm. */
  readonly edgeSpacing: number;
  /** Pieces that stay where they are, at any turn. What two of them do to each other is not looked at. */
  readonly pinned: readonly Placement[];
}
