import type { LineMark, LineRole, PieceDrawing, TextMark } from '../drawing/drawing.ts';
import { roomyLabel } from '../drawing/label.ts';
import { obstaclesOf } from '../drawing/obstacles.ts';
import { once } from '../drawing/once.ts';
import { textStyles } from '../drawing/roles.ts';
import { type Block, findRoom, quarterTurned, type Room, roomOf } from '../drawing/room.ts';
import { segment } from '../drawing/segment.ts';
import { setLabel } from '../drawing/set-label.ts';
import { type Box, boxCentre, boxesMeet, boxGrown, boxHeight, boxUnion, boxWidth } from '../geometry/box.ts';
import { flatten } from '../geometry/flatten.ts';
import type { Path } from '../geometry/path.ts';
import { add, distance, type Point, point, rotate, scale, subtract } from '../geometry/point.ts';
import { LABEL_CHORD } from '../geometry/tolerance.ts';
import { clippedRing } from './clipped.ts';
import { textBox } from './text-box.ts';
import { labelled, textsOf } from './turned.ts';

/** Kept free around words and inside the edge of a sheet, mm. */
const CLEAR = 1.2;
const QUARTER = Math.PI / 2;

/** Texts that belong together: a name, or a label's title and what stands below it. */
type Group = readonly TextMark[];

/**
 * The words of a piece, each whole on one of the boxes (what stays visible of a sheet once its neighbours are joined
 * to it): what would run over a join moves as little as may be, inside the piece and clear of its lines and other words,
 * and a label that has no such room is set anew.
 */
export const labelsOn = (piece: PieceDrawing, boxes: readonly Box[]): readonly (readonly TextMark[])[] => {
  const groups = labelled(piece.marks)
    .map(textsOf)
    .filter((group) => group.length > 0);
  const isWhole = (group: Group): boolean => boxes.some((box) => holds(box, around(group)));
  const placed = groups.filter(isWhole);
  const others = groups.filter((group) => !isWhole(group));
  // A label wants more room than the name of a mark.
  for (const group of [...others.filter(hasLabel), ...others.filter((g) => !hasLabel(g))])
    placed.push(broughtIn(group, piece, placed.flat(), boxes));
  const homes = placed.map((group) => boxes.findIndex((box) => isIn(box, boxCentre(around(group)))));
  return boxes.map((box, i) => {
    const texts = placed.filter((_, k) => homes[k] === i).flat();
    return hasLabel(texts) ? texts : [...texts, ...fragmentName(piece, texts, box)];
  });
};

const isLabel = ({ role }: TextMark): boolean => role === 'title' || role === 'label';

const hasLabel = (group: Group): boolean => group.some(isLabel);

const around = (group: Group): Box => boxUnion(group.map(textBox));

const isIn = (box: Box, p: Point): boolean => boxesMeet(box, { min: p, max: p });

const holds = (outer: Box, inner: Box): boolean =>
  inner.min.x >= outer.min.x + CLEAR &&
  inner.max.x <= outer.max.x - CLEAR &&
  inner.min.y >= outer.min.y + CLEAR &&
  inner.max.y <= outer.max.y - CLEAR;

/** Only the name, on a sheet that shows a part of the piece but not its label; none where there is no room. */
const fragmentName = (piece: PieceDrawing, texts: Group, box: Box): Group => {
  const room = roomOn([box], piece.silhouette, [...linesOf(piece), ...texts]);
  // No name, or no part of the piece?
  if (piece.name === '' || room.wallCount === 0) return [];
  const name: TextMark = {
    kind: 'text',
    role: 'note',
    at: boxCentre(room),
    lines: [piece.name],
    size: textStyles.note.size,
    align: 'middle',
    angle: 0,
  };
  return movedInto(room, [name]) ?? [];
};

/** Lines that a label had better not lie on, and those that also give way to one that has no room else. */
const RATHER: ReadonlySet<LineRole> = new Set(['centre', 'dimension']);
const AT_LAST: ReadonlySet<LineRole> = new Set([...RATHER, 'row', 'stitch', 'cut']);

const linesOf = (piece: PieceDrawing, but?: ReadonlySet<LineRole>): readonly LineMark[] =>
  piece.marks.filter((mark): mark is LineMark => mark.kind === 'line' && !but?.has(mark.role));

const broughtIn = (group: Group, piece: PieceDrawing, texts: Group, boxes: readonly Box[]): Group => {
  const { silhouette, label = { within: silhouette, words: null } } = piece;
  const from = boxCentre(around(group));
  const room = (within: Path, but?: ReadonlySet<LineRole>) =>
    once(() => roomOn(boxes, within, [...linesOf(piece, but), ...texts]));
  const inside = [room(label.within), room(label.within, RATHER)] as const;
  const moved = movedInto(inside[0](), group);
  if (moved) return moved;
  const anew =
    label.words && hasLabel(group)
      ? (roomyLabel(label.words, inside, from) ??
        setLabel(label.words, [room(label.within, AT_LAST), room(silhouette, AT_LAST)], from, true))
      : null;
  return anew ?? pushedIn(group, boxes);
};

/** What some boxes show of the inside of a closed line, clear of some marks. */
const roomOn = (boxes: readonly Box[], within: Path, marks: readonly (LineMark | TextMark)[]): Room => {
  const ring = flatten(within, LABEL_CHORD).slice(1);
  const walls = boxes.flatMap((box) => {
    const shown = clippedRing(ring, box);
    return shown.map((p, i) => segment(p, shown[(i + 1) % shown.length]!));
  });
  return roomOf(walls, obstaclesOf(marks));
};

/** Some texts moved to the nearest room for them, as they are or else turned a quarter. */
const movedInto = (room: Room, group: Group): Group | null => {
  const box = boxGrown(around(group), CLEAR);
  const [from, width, height] = [boxCentre(box), boxWidth(box), boxHeight(box)];
  const asItIs = nearestRoom(room, { width, height }, from);
  if (asItIs) return moved(group, from, asItIs, 0);
  const turned = nearestRoom(room, { width: height, height: width }, from);
  // Upright letters are turned to read upwards, others back to level.
  return turned && moved(group, from, turned, Math.cos(group[0]!.angle) > 0.5 ? QUARTER : -QUARTER);
};

/** Looked for along the block's longer side, which is exact. */
const nearestRoom = (room: Room, { width, height }: Block, wanted: Point): Point | null => {
  if (width >= height) return findRoom(room, { width, height }, wanted);
  const found = findRoom(quarterTurned(room), { width: height, height: width }, rotate(wanted, -QUARTER));
  return found && rotate(found, QUARTER);
};

const moved = (group: Group, from: Point, to: Point, turn: number): Group =>
  group.map((text) => ({
    ...text,
    at: add(to, rotate(subtract(text.at, from), turn)),
    angle: text.angle + turn,
  }));

const clamped = (n: number, low: number, high: number): number =>
  low > high ? (low + high) / 2 : Math.min(Math.max(n, low), high);

/** No room anywhere: onto the box that needs the shortest push, and smaller where even that is not wide enough. */
const pushedIn = (group: Group, boxes: readonly Box[]): Group => {
  const box = around(group);
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
  const { k, centre, to } = pushes.find((p) => p.cost === cost)!;
  return group.map((text) => ({
    ...text,
    size: k * text.size,
    at: add(to, scale(subtract(text.at, centre), k)),
  }));
};
