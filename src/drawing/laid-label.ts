import { type LaidPiece, laidPolygon } from '../cloth/cloth-lay.ts';
import { layNameLines } from '../cloth/lay-name.ts';
import { boxCentre, boxOf } from '../geometry/box.ts';
import { add, heading, type Point, point, scale } from '../geometry/point.ts';
import { LEADING } from './roles.ts';
import { type Block, findRoom, type Room, roomOf } from './room.ts';
import { segment } from './segment.ts';
import { textWidth } from './text-width.ts';

/** What stands on a piece that lies on the cloth, and where. Lengths in mm of cloth. */
export interface LaidLabel {
  readonly lines: readonly string[];
  /** The em of its letters, and the middle of its lines. */
  readonly size: number;
  readonly at: Point;
  /** The grainline; null where there is room for none. */
  readonly grain: readonly [Point, Point] | null;
}

/** The sizes tried, from the largest that is wished to the least that can be read. */
const SIZES = 8;
/** Kept free round a label; the length of a grainline and the room beside it. In ems. */
const AIR = 0.25;
const GRAIN = 2.8;
const BESIDE = 1.2;

/**
 * A piece's name with its grainline, as large as they have room inside its cut line: near the middle of the piece, the
 * line below the name or, where that is too high, beside it. In a piece that is too small for both the name
 * stands alone, or over its edge.
 */
export const laidLabel = (
  laid: LaidPiece,
  { least, most }: { readonly least: number; readonly most: number },
): LaidLabel => {
  const lines = laidLines(laid);
  const ring = laidPolygon(laid);
  const room = roomOf(
    ring.map((p, i) => segment(p, ring[(i + 1) % ring.length]!)),
    [],
  );
  const wanted = boxCentre(boxOf(ring));
  const turn = laid.at.rotation;
  const ways = arrangements(lines, turn);
  for (let i = 0; i < SIZES; i++) {
    const size = most * (least / most) ** (i / (SIZES - 1));
    for (const way of ways) {
      const middle = placed(room, way, size, wanted);
      if (middle === null) continue;
      const [at, on] = [way.text, way.grain].map((from) => add(middle, scale(from, size)));
      return { lines, size, at: at!, grain: grainline(on!, turn, size) };
    }
  }
  const alone = placed(room, textBlock(lines), least, wanted);
  return { lines, size: least, at: alone ?? wanted, grain: null };
};

/** What has to be known of it while it is cut. */
const laidLines = ({ piece }: LaidPiece): readonly string[] => [
  ...layNameLines(piece),
  ...(piece.mirrored && piece.layers !== 'on the fold' ? ['face down'] : []),
  ...(piece.layers === 'one of two' ? ['one layer'] : []),
];

/** In ems. */
const textBlock = (lines: readonly string[]): Block => ({
  width: Math.max(...lines.map((line) => textWidth(line))),
  height: (lines.length - 1) * LEADING + 1,
});

const placed = (room: Room, { width, height }: Block, size: number, wanted: Point): Point | null =>
  findRoom(room, { width: (width + 2 * AIR) * size, height: (height + 2 * AIR) * size }, wanted);

/** A name and its grainline together, in ems: how much room they take, and where each stands from the middle of that. */
interface Arrangement extends Block {
  readonly text: Point;
  readonly grain: Point;
}

/** The grainline at an angle below the name, or beside it. */
const arrangements = (lines: readonly string[], turn: number): readonly Arrangement[] => {
  const text = textBlock(lines);
  const grain: Block = {
    width: Math.max(BESIDE, GRAIN * Math.abs(Math.cos(turn)) + AIR),
    height: Math.max(BESIDE, GRAIN * Math.abs(Math.sin(turn)) + AIR),
  };
  return [
    {
      width: Math.max(text.width, grain.width),
      height: text.height + grain.height,
      text: point(0, grain.height / 2),
      grain: point(0, -text.height / 2),
    },
    {
      width: text.width + grain.width,
      height: Math.max(text.height, grain.height),
      text: point(-grain.width / 2, 0),
      grain: point(text.width / 2, 0),
    },
  ];
};

const grainline = (middle: Point, turn: number, size: number): readonly [Point, Point] => {
  const half = scale(heading(turn), (GRAIN / 2) * size);
  return [add(middle, scale(half, -1)), add(middle, half)];
};
