import type { Mark } from '../drawing/drawing.ts';
import { movedMarks } from '../drawing/steps/moved-mark.ts';
import { type Box, boxHeight, boxWidth } from '../geometry/box.ts';
import type { Path } from '../geometry/path.ts';
import { point } from '../geometry/point.ts';
import { clutterOf, takeSpot } from './clutter.ts';
import type { Heading } from './sheet.ts';
import { checkBlock, nameBlock } from './tag.ts';

/** Which sheet it is. */
export interface SheetTitle {
  readonly name: string;
  readonly number: number;
  readonly of: number;
  readonly heading: Heading;
}

/** From the edges of what is seen of a sheet, mm. */
const INSET = 2;

/** A sheet's name and its small check, near its foot, where they cover least of what is drawn and of the pieces. */
export const furniture = (
  { name, number, of, heading }: SheetTitle,
  visible: Box,
  marks: readonly Mark[],
  outlines: readonly Path[],
): readonly Mark[] => {
  const free = {
    min: point(visible.min.x + INSET, visible.min.y + INSET),
    max: point(visible.max.x - INSET, visible.max.y - INSET),
  };
  const clutter = clutterOf(free, marks, outlines);
  const room = { width: boxWidth(free), height: boxHeight(free) };
  const blocks = [checkBlock(heading.unit), nameBlock(name, `${number} of ${of}`, heading.cap, room)];
  return blocks.flatMap((block) => movedMarks(block.marks, takeSpot(clutter, block.size, free.min)));
};
