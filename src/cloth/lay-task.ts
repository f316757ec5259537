import type { Placement, Task } from '../nesting/task.ts';
import type { ClothSpec } from './cloth.ts';
import type { LayPiece } from './lay-pieces.ts';
import { liesFolded } from './lies-folded.ts';
import { onFold } from './on-fold.ts';

/** Kept between two cut lines, mm: room for the shears. */
const SPACING = 3;
/** Kept from the selvedge, mm: the usable width is measured between the selvedges already. */
const SELVEDGE = 0;

/**
 * What has to be laid on one cloth, ready for the search. `pinned` are the pieces that the user has put down. A half for
 * which the fold has no room finds no place: anywhere else it is of no use.
 */
export const layTask = (
  pieces: readonly LayPiece[],
  spec: ClothSpec,
  pinned: readonly Placement[] = [],
): Task => {
  const { width, length, scraps } = spec;
  const strip = { kind: 'strip', width: liesFolded(spec) ? width / 2 : width, length } as const;
  const halves = onFold(pieces, strip, SPACING, pinned);
  const lying = new Set([...pinned, ...halves].map(({ piece }) => piece));
  return {
    ground: scraps.length > 0 ? { kind: 'areas', areas: scraps } : strip,
    // No more of a piece than the search has to know: all of it is copied to where the search runs.
    pieces: pieces.map(({ id, polygon, rotations, layers }) => ({
      id,
      polygon,
      rotations: layers === 'on the fold' && !lying.has(id) ? [] : rotations,
    })),
    spacing: SPACING,
    edgeSpacing: SELVEDGE,
    pinned: [...halves, ...pinned],
  };
};
