import type { Mark, PieceDrawing, TextMark } from '../drawing/drawing.ts';
import { type Segment, segment, segmentsOf } from '../drawing/polygon.ts';
import { textStyles } from '../drawing/roles.ts';
import { findRoom, roomOf, turnedRoom } from '../drawing/room.ts';
import { blockSize } from '../drawing/text-block.ts';
import { type Box, boxCentre, boxesMeet, boxHeight, boxUnion, boxWidth } from '../geometry/box.ts';
import { add, distance, ORIGIN, type Point, point, rotate, scale, subtract } from '../geometry/point.ts';
import { textBox, textCorners } from './text-box.ts';
import { labelled, textsOf } from './turned.ts';

/** Kept free around words and inside the edge of a sheet, mm. */
const CLEAR = 1.2;

/**
 * The words of a piece, each whole on one of the boxes (what stays visible of a sheet once its neighbours are joined
 * to it): a label that would run over a join moves as little as may be, inside the piece and clear of its lines.
 */
export const labelsOn = (piece: PieceDrawing, boxes: readonly Box[]): readonly (readonly TextMark[])[] => {
  const groups = labelled(piece.marks)
    .map(textsOf)
    .filter((group) => group.length > 0);
  const on: TextMark[][] = boxes.map(() => []);
  for (const group of groups) {
    const others = groups.filter((g) => g !== group).flat();
    const home = homeOf(group, piece, others, boxes);
    on[home.index]?.push(...home.group);
  }
  return on.map((texts, i) =>
    texts.some(isLabel) ? texts : [...texts, ...fragmentName(piece, texts, boxes[i]!)],
  );
};

const boxShared = (a: Box, b: Box): Box => ({
  min: point(Math.max(a.min.x, b.min.x), Math.max(a.min.y, b.min.y)),
  max: point(Math.min(a.max.x, b.max.x), Math.min(a.max.y, b.max.y)),
});

const isLabel = ({ role }: TextMark): boolean => role === 'title' || role === 'label';

/** Only the name, on a sheet that shows a part of the piece but not its label; none where there is no room. */
const fragmentName = (piece: PieceDrawing, texts: readonly TextMark[], box: Box): readonly TextMark[] => {
  if (piece.name === '' || !boxesMeet(piece.bounds, box)) return [];
  const part = boxShared(piece.bounds, box);
  const { size } = textStyles.note;
  const name: TextMark = {
    kind: 'text',
    role: 'note',
    at: ORIGIN,
    lines: [piece.name],
    size,
    align: 'middle',
    angle: 0,
  };
  const { width, height } = blockSize(name);
  const block = { width: width + 2 * CLEAR, height: height + 2 * CLEAR };
  for (const angle of [0, Math.PI / 2]) {
    const at = roomIn(piece, texts, box, block, angle, boxCentre(part));
    if (at !== null) return [{ ...name, at, angle }];
  }
  return [];
};

interface Home {
  readonly index: number;
  readonly group: readonly TextMark[];
}

const homeOf = (
  group: readonly TextMark[],
  piece: PieceDrawing,
  others: readonly TextMark[],
  boxes: readonly Box[],
): Home => {
  const box = boxUnion(group.map(textBox));
  const at = boxes.findIndex((b) => holds(b, box));
  if (at >= 0) return { index: at, group };
  const found = group.some(isLabel) ? nearestRoom(group, piece, others, boxes) : null;
  return found ?? pushedIn(group, box, boxes);
};

const holds = (outer: Box, inner: Box): boolean =>
  inner.min.x >= outer.min.x + CLEAR &&
  inner.max.x <= outer.max.x - CLEAR &&
  inner.min.y >= outer.min.y + CLEAR &&
  inner.max.y <= outer.max.y - CLEAR;

/** Room for a label in the part of the piece on one of the boxes: the nearest that is clear of all lines. */
const nearestRoom = (
  group: readonly TextMark[],
  piece: PieceDrawing,
  others: readonly TextMark[],
  boxes: readonly Box[],
): Home | null => {
  const centre = boxCentre(boxUnion(group.map(textBox)));
  let best: { readonly home: Home; readonly far: number } | null = null;
  for (const [index, box] of boxes.entries()) {
    if (!boxesMeet(box, piece.bounds)) continue;
    const found = roomFor(group, piece, others, box, centre);
    if (found === null) continue;
    const far = distance(found, centre);
    if (best === null || far < best.far)
      best = { home: { index, group: moved(group, subtract(found, centre)) }, far };
  }
  return best?.home ?? null;
};

const moved = (group: readonly TextMark[], by: Point): readonly TextMark[] =>
  group.map((text) => ({ ...text, at: add(text.at, by) }));

const roomFor = (
  group: readonly TextMark[],
  piece: PieceDrawing,
  others: readonly TextMark[],
  box: Box,
  wanted: Point,
): Point | null => {
  const { angle } = group[0]!;
  const level = boxUnion(group.map((text) => textBox({ ...text, angle: 0, at: rotate(text.at, -angle) })));
  const block = { width: boxWidth(level) + 2 * CLEAR, height: boxHeight(level) + 2 * CLEAR };
  return roomIn(piece, others, box, block, angle, wanted);
};

/** The centre of a free rectangle inside the piece and the box, turned by an angle, or null. */
export const roomIn = (
  piece: PieceDrawing,
  texts: readonly TextMark[],
  box: Box,
  block: { readonly width: number; readonly height: number },
  angle: number,
  wanted: Point,
): Point | null => {
  const half = Math.max(block.width, block.height) / 2;
  const inside = point(
    clamped(wanted.x, box.min.x + half, box.max.x - half),
    clamped(wanted.y, box.min.y + half, box.max.y - half),
  );
  const walls = segmentsOf(piece.silhouette);
  const room = roomOf(walls, [...frame(box), ...obstaclesIn(piece.marks, texts)]);
  const found = findRoom(turnedRoom(room, -angle), block, rotate(inside, -angle));
  if (found === null) return null;
  const back = rotate(found, angle);
  const { min, max } = box;
  return back.x > min.x && back.x < max.x && back.y > min.y && back.y < max.y ? back : null;
};

const clamped = (n: number, low: number, high: number): number =>
  low > high ? (low + high) / 2 : Math.min(Math.max(n, low), high);

const frame = ({ min, max }: Box): readonly Segment[] => {
  const [b, d] = [point(max.x, min.y), point(min.x, max.y)];
  return [segment(min, b), segment(b, max), segment(max, d), segment(d, min)];
};

const obstaclesIn = (marks: readonly Mark[], texts: readonly TextMark[]): readonly Segment[] => [
  ...marks.flatMap((mark) => (mark.kind === 'line' && mark.role !== 'cut' ? segmentsOf(mark.path) : [])),
  ...texts.flatMap((text) => {
    const [a, b, c, d] = textCorners(text) as [Point, Point, Point, Point];
    return [segment(a, b), segment(b, c), segment(c, d), segment(d, a), segment(a, c)];
  }),
];

/** No room anywhere: onto the box that needs the shortest push, and smaller where even that is not wide enough. */
const pushedIn = (group: readonly TextMark[], box: Box, boxes: readonly Box[]): Home => {
  const pushes = boxes.map((b) => {
    const free = { width: boxWidth(b) - 2 * CLEAR, height: boxHeight(b) - 2 * CLEAR };
    const k = Math.min(1, free.width / boxWidth(box), free.height / boxHeight(box));
    const centre = boxCentre(box);
    const to = point(
      clamped(centre.x, b.min.x + CLEAR + (k * boxWidth(box)) / 2, b.max.x - CLEAR - (k * boxWidth(box)) / 2),
      clamped(
        centre.y,
        b.min.y + CLEAR + (k * boxHeight(box)) / 2,
        b.max.y - CLEAR - (k * boxHeight(box)) / 2,
      ),
    );
    return { k, centre, to, cost: distance(to, centre) + 1000 * (1 - k) };
  });
  const cost = Math.min(...pushes.map((p) => p.cost));
  const index = pushes.findIndex((p) => p.cost === cost);
  const { k, centre, to } = pushes[index]!;
  return {
    index,
    group: group.map((text) => ({
      ...text,
      size: k * text.size,
      at: add(to, scale(subtract(text.at, centre), k)),
    })),
  };
};
