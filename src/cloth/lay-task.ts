import { boxOf } from '../geometry/box.ts';
import type { Placement, Task } from '../nesting/task.ts';
import type { ClothSpec } from './cloth.ts';
import type { LayPiece } from './lay-pieces.ts';

/** Kept between two cut lines, mm: room for the shears. */
const SPACING = 3;
/** Kept from the selvedge, mm: the usable width is measured between the selvedges already. */
const SELVEDGE = 0;

/** What has to be laid on one cloth, ready for the search. `pinned` are the pieces that the user has put down. */
export const layTask = (
  pieces: readonly LayPiece[],
  { width, length, folded, scraps }: ClothSpec,
  pinned: readonly Placement[] = [],
): Task => ({
  ground:
    scraps.length > 0
      ? { kind: 'areas', areas: scraps }
      : { kind: 'strip', width: folded ? width / 2 : width, length },
  pieces,
  spacing: SPACING,
  edgeSpacing: SELVEDGE,
  pinned: [...onFold(pieces.filter((p) => !pinned.some(({ piece }) => piece === p.id))), ...pinned],
});

/** Halves lie on the fold, which is the lower side of the strip, one after the other, the longest first. */
const onFold = (pieces: readonly LayPiece[]): readonly Placement[] => {
  const halves = pieces
    .filter(({ layers }) => layers === 'on the fold')
    .map((piece) => ({ piece, box: boxOf(piece.polygon) }))
    .toSorted((a, b) => b.box.max.y - b.box.min.y - (a.box.max.y - a.box.min.y));
  let reached = 0;
  return halves.map(({ piece, box }) => {
    const x = reached - box.min.x;
    reached += box.max.x - box.min.x + SPACING;
    return { piece: piece.id, container: 0, rotation: 0, x, y: -box.min.y };
  });
};
