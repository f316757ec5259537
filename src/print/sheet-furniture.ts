import type { Mark } from '../drawing/drawing.ts';
import { type Box, boxHeight, boxWidth } from '../geometry/box.ts';
import { point } from '../geometry/point.ts';
import { spotFinder } from './free-spot.ts';
import type { Heading } from './sheet.ts';
import { checkBlock, movedMarks, nameBlock } from './tag.ts';

/** Which sheet it is. */
export interface SheetTitle {
  readonly name: string;
  readonly number: number;
  readonly of: number;
  readonly heading: Heading;
}

/** From the edges of what is seen of a sheet, mm. */
const INSET = 2;

/** A sheet's name and its small check, where they cover least of what is drawn. */
export const furniture = (
  { name, number, of, heading }: SheetTitle,
  visible: Box,
  marks: readonly Mark[],
): readonly Mark[] => {
  const free = {
    min: point(visible.min.x + INSET, visible.min.y + INSET),
    max: point(visible.max.x - INSET, visible.max.y - INSET),
  };
  const find = spotFinder(free, marks);
  const room = { width: boxWidth(free), height: boxHeight(free) };
  const blocks = [nameBlock(name, `${number} of ${of}`, heading.cap, room), checkBlock(heading.unit)];
  return blocks.flatMap((block) => movedMarks(block.marks, find(block.size)));
};
