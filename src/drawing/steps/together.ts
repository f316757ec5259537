import { boundsOf } from '../../geometry/bounds.ts';
import { type Box, boxUnion } from '../../geometry/box.ts';
import { pathLength, pointAt, stretch, tangentAt } from '../../geometry/measure.ts';
import type { Path } from '../../geometry/path.ts';
import { cubic } from '../../geometry/path.ts';
import { direction, type Point, point, rotate, scale, subtract } from '../../geometry/point.ts';
import { rotated, scaled, translated } from '../../geometry/transform.ts';
import type { Allowances } from '../../pattern/pattern.ts';
import type { Piece } from '../../pattern/piece.ts';
import type { EdgeUse, Seam } from '../../pattern/seam.ts';
import type { LineMark } from '../drawing.ts';
import { arrowhead } from '../marks/arrowhead.ts';
import { notchesOf } from '../marks-of.ts';
import { lineMark, movedMarks } from './moved-mark.ts';
import type { Picture } from './shown.ts';
import type { Size } from './size.ts';
import { type Small, small } from './small.ts';
import { throughWindow } from './window.ts';

/** No piece is drawn smaller than this: a long one is shown in part. */
const LEAST = 0.2;
/** The piece below peeks out by so much, mm on paper. */
const PEEK: Point = point(-1.5, 1.5);
/** Below the seam stays room for its allowance, mm on paper. */
const FOOT = 5;

interface Pair {
  readonly below: EdgeUse;
  readonly above: EdgeUse;
  /** Along each edge as its outline runs, mm. */
  readonly at: readonly [number, number];
}

/**
 * Two pieces of a seam laid right sides together, drawn small: the one below face up, the one above face down (wrong
 * sides together, the other way round), edge on
 * edge at one place of the seam; the seam's line, the notches, and an arrow for the way the upper one opens.
 */
export const together = (
  seam: Seam,
  pieces: readonly Piece[],
  allowances: Allowances,
  room: Size,
  facing: 'right' | 'wrong' = 'right',
  onTop: 'a' | 'b' | null = null,
): Picture & { readonly below: string; readonly above: string } => {
  const known = new Map(pieces.map((piece) => [piece.id, piece]));
  const pair = laid(pairOf(seam, known), onTop === null ? null : seam[onTop]);
  // Wrong sides together, the one below lies face down.
  const turned = facing === 'wrong';
  const [a, b] = [known.get(pair.below.piece)!, known.get(pair.above.piece)!];
  const whole = boxUnion([
    placed(small(a, allowances, 1), pair.below, pair.at[0], isFlipped(a, pair.below) !== turned).bounds,
    placed(small(b, allowances, 1), pair.above, pair.at[1], isFlipped(b, pair.above) === turned).bounds,
  ]);
  const k = Math.max(
    LEAST,
    Math.min(
      room.width / (whole.max.x - whole.min.x),
      (room.height - FOOT) / (whole.max.y - whole.min.y),
      0.6,
    ),
  );
  const lower = placed(
    small(a, allowances, k),
    pair.below,
    pair.at[0] * k,
    isFlipped(a, pair.below) !== turned,
  );
  const upper = placed(
    small(b, allowances, k),
    pair.above,
    pair.at[1] * k,
    isFlipped(b, pair.above) === turned,
    // A ring and a tie are folded: their other edge is sewn by the same line.
    [seam.a, seam.b]
      .filter((side) => side.includes(pair.above))
      .flatMap((side) => side.filter((use) => use !== pair.above && isSamePiece(use, pair.above))),
  );
  const box = windowOn(boxUnion([lower.bounds, upper.bounds]), room);
  const marks = throughWindow(
    [
      ...(movedMarks([...lower.lines], PEEK) as readonly LineMark[]),
      ...upper.lines,
      lineMark('sew', upper.seam),
      ...upper.further.map((path) => lineMark('sew', path)),
      ...opening(boundsOf(upper.seam), box),
    ],
    box,
  );
  return {
    width: room.width,
    height: box.max.y - box.min.y,
    marks: movedMarks(marks, subtract(point(0, 0), box.min)),
    below: pair.below.piece,
    above: pair.above.piece,
  };
};

/** As wide as there is room, as high as what is shown: the arrow reaches below the seam, the piece below peeks out above. */
const windowOn = ({ min, max }: Box, room: Size): Box => {
  const middle = Math.min(Math.max((min.x + max.x) / 2, -room.width * 0.3), room.width * 0.3);
  const low = Math.max(Math.min(min.y, -FOOT) - 1, -room.height * 0.3);
  const high = Math.min(max.y + PEEK.y + 1, low + room.height);
  return { min: point(middle - room.width / 2, low), max: point(middle + room.width / 2, high) };
};

/** The same two with the one of some side above, if it matters. */
const laid = (pair: Pair, onTop: readonly EdgeUse[] | null): Pair =>
  onTop === null || onTop.includes(pair.above)
    ? pair
    : { below: pair.above, above: pair.below, at: [pair.at[1], pair.at[0]] };

/** The middle of the shortest stretch that two single edges share, of the side with more pieces in it. */
const pairOf = (seam: Seam, known: ReadonlyMap<string, Piece>): Pair => {
  const lengthOf = (use: EdgeUse): number => (use.to ?? edgeLength(use, known)) - (use.from ?? 0);
  const [few, many] = isBelow(seam, known) ? [seam.a, seam.b] : [seam.b, seam.a];
  const [shorter, longer] = [total(few, lengthOf), total(many, lengthOf)];
  const middle = shownOf(many, lengthOf);
  const before = total(many.slice(0, middle), lengthOf);
  const half = lengthOf(many[middle]!) / 2;
  const onFew = ((before + half) * shorter) / longer;
  let reached = 0;
  for (const use of few) {
    const length = lengthOf(use);
    if (onFew <= reached + length + 1e-6 || use === few.at(-1)) {
      return {
        below: use,
        above: many[middle]!,
        at: [alongOutline(use, onFew - reached, known), alongOutline(many[middle]!, half, known)],
      };
    }
    reached += length;
  }
  throw new RangeError(`the seam ${seam.id} has no edges`);
};

/** Of the edges of a side the middle one is shown, or the longest where all belong to one piece. */
const shownOf = (uses: readonly EdgeUse[], lengthOf: (use: EdgeUse) => number): number => {
  if (!uses.every((use) => isSamePiece(use, uses[0]!))) return Math.floor((uses.length - 1) / 2);
  const lengths = uses.map(lengthOf);
  return lengths.indexOf(Math.max(...lengths));
};

const isSamePiece = (one: EdgeUse, other: EdgeUse): boolean =>
  one.piece === other.piece && one.copy === other.copy;

/** The side with fewer pieces lies below; of two single ones, that with the longer edge. */
const isBelow = ({ a, b }: Seam, known: ReadonlyMap<string, Piece>): boolean =>
  a.length !== b.length || a.length > 1
    ? a.length <= b.length
    : edgeLength(a[0]!, known) >= edgeLength(b[0]!, known);

const total = (uses: readonly EdgeUse[], lengthOf: (use: EdgeUse) => number): number =>
  uses.reduce((sum, use) => sum + lengthOf(use), 0);

const edgePath = (use: EdgeUse, known: ReadonlyMap<string, Piece>): Path => {
  const edge = known.get(use.piece)?.outline.find(({ name }) => name === use.edge);
  if (!edge) throw new RangeError(`no edge ${use.piece}.${use.edge} to draw`);
  return edge.path;
};

const edgeLength = (use: EdgeUse, known: ReadonlyMap<string, Piece>): number =>
  pathLength(edgePath(use, known));

/** A distance along a use, as a distance along its edge in the outline's own direction. */
const alongOutline = (use: EdgeUse, mm: number, known: ReadonlyMap<string, Piece>): number => {
  const walked = (use.from ?? 0) + mm;
  return use.backwards ? edgeLength(use, known) - walked : walked;
};

/** A copy that is cut face down. */
const isFlipped = ({ cuts }: Piece, { copy }: EdgeUse): boolean => {
  const cut = cuts.find(({ mirrored = 0 }) => mirrored > 0);
  return cut !== undefined && copy % 2 === 1;
};

interface Lying {
  readonly bounds: Box;
  readonly lines: readonly LineMark[];
  readonly seam: Path;
  /** What else of the same seam is sewn on this piece. */
  readonly further: readonly Path[];
}

/** A piece with one place of an edge on the origin and the piece above it; face down it is its own mirror image. */
const placed = (
  one: Small,
  use: EdgeUse,
  at: number,
  flipped: boolean,
  others: readonly EdgeUse[] = [],
): Lying => {
  const edgeOf = (of: EdgeUse) => one.piece.outline.find(({ name }) => name === of.edge)!;
  const edge = edgeOf(use);
  const [p, t] = [pointAt(edge.path, at), tangentAt(edge.path, at)];
  // Walked along its outline a piece lies to the left; mirrored, to the right, so that it is walked back.
  const [foot, along] = flipped ? [point(-p.x, p.y), point(t.x, -t.y)] : [p, t];
  const turn = -direction(along);
  const lay = (path: Path): Path =>
    translated(rotated(flipped ? scaled(path, -1, 1) : path, turn), scale(rotate(foot, turn), -1));
  const sewn = stretchOfUse(edge.path, use, one);
  const outline = lay(one.cut);
  return {
    bounds: boundsOf(outline),
    lines: [
      lineMark('mark', outline, { ground: true }),
      ...notchesOf(one.piece, one.allowances)
        .filter(({ filled }) => filled)
        .map((mark) => ({ ...mark, path: lay(mark.path) })),
    ],
    seam: lay(sewn),
    further: others.map((other) => lay(stretchOfUse(edgeOf(other).path, other, one))),
  };
};

/** The part of an edge that is sewn; its distances are those of the whole size. */
const stretchOfUse = (path: Path, use: EdgeUse, one: Small): Path => {
  const length = pathLength(path);
  if (use.from === undefined || use.to === undefined) return path;
  const k = one.scale;
  const [from, to] = [use.from * k, use.to * k];
  return use.backwards ? stretch(path, length - to, length - from) : stretch(path, from, to);
};

/** Up from the upper piece and over to the other side of the seam: the way it opens. */
const opening = (sewn: Box, box: Box): readonly LineMark[] => {
  const x = Math.min(sewn.max.x - 1, 14);
  const [from, to] = [point(x, 7), point(x, Math.max(-4.5, box.min.y + 0.5))];
  const [c1, c2] = [point(x + 7, 6), point(x + 7, -2)];
  return [
    lineMark('mark', [cubic(from, c1, c2, to)], { tone: 'chalk' }),
    lineMark('mark', arrowhead(to, unitTo(c2, to), 2.4), { filled: true, tone: 'chalk' }),
  ];
};

const unitTo = (from: Point, to: Point): Point => {
  const v = subtract(to, from);
  return scale(v, 1 / Math.sqrt(v.x * v.x + v.y * v.y));
};
