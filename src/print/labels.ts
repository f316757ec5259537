import type { PieceDrawing, TextMark } from '../drawing/drawing.ts';
import { textStyles } from '../drawing/roles.ts';
import { type Box, boxCentre, boxesMeet, boxGrown, boxHeight, boxUnion, boxWidth } from '../geometry/box.ts';
import { add, distance, ORIGIN, type Point, point, rotate, scale, subtract } from '../geometry/point.ts';
import { boxShared, roomOnSheet } from './room-on-sheet.ts';
import type { Size } from './sheet-size.ts';
import { textBox } from './text-box.ts';
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
  const wide = boxGrown(textBox(name), CLEAR);
  for (const angle of [0, Math.PI / 2]) {
    const block = angle === 0 ? sizeOf(wide) : turnedSize(sizeOf(wide));
    const at = roomOnSheet(piece, texts, box, block, boxCentre(part));
    if (at !== null) return [{ ...name, at, angle }];
  }
  return [];
};

const sizeOf = (box: Box): Size => ({ width: boxWidth(box), height: boxHeight(box) });
const turnedSize = ({ width, height }: Size): Size => ({ width: height, height: width });

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

/** Room for a label in the part of the piece on one of the boxes, as it is or turned a quarter: the nearest there is. */
const nearestRoom = (
  group: readonly TextMark[],
  piece: PieceDrawing,
  others: readonly TextMark[],
  boxes: readonly Box[],
): Home | null => {
  const box = boxGrown(boxUnion(group.map(textBox)), CLEAR);
  const centre = boxCentre(box);
  // Upright letters are turned to read upwards, others back to level.
  const quarter = (Math.cos(group[0]!.angle) > 0.5 ? 1 : -1) * (Math.PI / 2);
  for (const turn of [0, quarter]) {
    const block = turn === 0 ? sizeOf(box) : turnedSize(sizeOf(box));
    const found = boxes.flatMap((b, index) => {
      const at = boxesMeet(b, piece.bounds) ? roomOnSheet(piece, others, b, block, centre) : null;
      return at === null ? [] : [{ index, at, far: distance(at, centre) }];
    });
    const [nearest] = found.sort((a, b) => a.far - b.far);
    if (nearest !== undefined)
      return { index: nearest.index, group: movedLabel(group, centre, nearest.at, turn) };
  }
  return null;
};

const movedLabel = (group: readonly TextMark[], from: Point, to: Point, turn: number): readonly TextMark[] =>
  group.map((text) => ({
    ...text,
    at: add(to, rotate(subtract(text.at, from), turn)),
    angle: text.angle + turn,
  }));

const clamped = (n: number, low: number, high: number): number =>
  low > high ? (low + high) / 2 : Math.min(Math.max(n, low), high);

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
