import { pathLength, stretch } from '../geometry/measure.ts';
import { type Line, line, type Path } from '../geometry/path.ts';
import { direction, type Point, point, rotate, subtract } from '../geometry/point.ts';
import { rotated, scaled } from '../geometry/transform.ts';
import { stopsAtSeam } from '../pattern/cut-line.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { Cut, Edge, Notch, Piece, PieceMark } from '../pattern/piece.ts';
import { ratio, type Words, words } from '../words.ts';
import type { Cloths } from './cloth.ts';
import { type Growth, growthOf, NO_GROWTH } from './shrinkage.ts';

/**
 * The pieces as they are cut: each so much larger than it is sewn as its cloth will shrink. A piece cut from two
 * cloths that shrink differently becomes one for each. The very same pattern where nothing shrinks.
 */
export const cutPattern = (pattern: Pattern, cloths: Cloths): Pattern => {
  const growths = Object.values(cloths).map(growthOf);
  if (growths.every((growth) => same(growth, NO_GROWTH))) return pattern;
  return { ...pattern, pieces: pattern.pieces.flatMap((piece) => cutPieces(piece, cloths)) };
};

const same = (a: Growth, b: Growth): boolean => a.along === b.along && a.across === b.across;

const cutPieces = (piece: Piece, cloths: Cloths): readonly Piece[] => {
  const groups: { readonly growth: Growth; readonly cuts: Cut[] }[] = [];
  for (const cut of piece.cuts) {
    const growth = growthOf(cloths[cut.cloth]);
    const group = groups.find((one) => same(one.growth, growth));
    if (group) group.cuts.push(cut);
    else groups.push({ growth, cuts: [cut] });
  }
  if (groups.length === 0) return [piece];
  return groups.map(({ growth, cuts }, i) => {
    const own = { ...piece, cuts, notes: [...piece.notes, ...washNotes(growth)] };
    const outline = cuts.every(({ cloth }) => stopsAtSeam(cloth)) ? onTheLine(piece) : piece.outline;
    return grown({ ...own, outline, ...(i === 0 ? {} : named(piece, cuts[0]!)) }, growth);
  });
};

/** Its edges without allowance. */
const onTheLine = ({ outline }: Piece): readonly Edge[] => outline.map((edge) => ({ ...edge, kind: 'none' }));

const washNotes = (growth: Growth): readonly Words[] => {
  if (same(growth, NO_GROWTH)) return [];
  const [along, across] = [1 - 1 / growth.along, 1 - 1 / growth.across];
  return [
    words`Larger by what the first wash or steaming takes: ${ratio(along)} along the grain, ${ratio(across)} across.`,
  ];
};

const named = ({ id, name }: Piece, { cloth }: Cut): Pick<Piece, 'id' | 'name'> => ({
  id: `${id}.${cloth}`,
  name: `${name}, ${cloth}`,
});

/** A piece stretched along its grain and across it. Arcs become cubics; notches stay on the threads that they mark. */
export const grown = (piece: Piece, growth: Growth): Piece => {
  if (same(growth, NO_GROWTH)) return piece;
  const { along, across } = growth;
  const [foot, head] = piece.grain;
  const lie = direction(subtract(head, foot));
  const stretched = (path: Path): Path => rotated(scaled(rotated(path, -lie), along, across), lie);
  const moved = (p: Point): Point => {
    const { x, y } = rotate(p, -lie);
    return rotate(point(x * along, y * across), lie);
  };
  const outline = piece.outline.map((edge): Edge => ({ ...edge, path: stretched(edge.path) }));
  const notchOn = (notch: Notch): Notch => {
    const path = piece.outline.find(({ name }) => name === notch.edge)?.path ?? [];
    return { ...notch, at: notch.at > 0 ? pathLength(stretched(stretch(path, 0, notch.at))) : 0 };
  };
  return {
    ...piece,
    outline,
    grain: [moved(foot), moved(head)],
    notches: piece.notches.map(notchOn),
    centreLines: piece.centreLines.map(stretched),
    marks: piece.marks.map((mark) => markMoved(mark, moved, stretched)),
    labelAt: moved(piece.labelAt),
    dimensions: piece.dimensions.map((dimension) => ({ ...dimension, along: stretched(dimension.along) })),
  };
};

const markMoved = (
  mark: PieceMark,
  moved: (p: Point) => Point,
  stretched: (path: Path) => Path,
): PieceMark => {
  const movedLine = ({ from, to }: Line): Line => line(moved(from), moved(to));
  switch (mark.kind) {
    case 'stretch':
      return { ...mark, path: stretched(mark.path) };
    case 'buttonhole':
      return { ...mark, from: moved(mark.from), to: moved(mark.to) };
    case 'pleat':
      return { ...mark, fold: movedLine(mark.fold), place: movedLine(mark.place) };
    default:
      return { ...mark, at: moved(mark.at) };
  }
};
