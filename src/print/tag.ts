import type { Mark, TextMark } from '../drawing/drawing.ts';
import { LEADING, textStyles } from '../drawing/roles.ts';
import { textWidth } from '../drawing/text-width.ts';
import { line } from '../geometry/path.ts';
import { type Point, point } from '../geometry/point.ts';
import { inches, type Unit } from '../units.ts';
import { brokenLines } from './broken-lines.ts';
import type { Size } from './sheet-size.ts';

/** A block of marks with its lower left corner on the origin, mm. */
export interface Block {
  readonly size: Size;
  readonly marks: readonly Mark[];
}

/** A small cross on every sheet that shows whether this one was scaled: one page of a set can be. */
export const checkBlock = (unit: Unit): Block => {
  const across = unit === 'in' ? inches(1) : 25;
  const words = unit === 'in' ? '1 in' : '25 mm';
  const [low, high] = [PAD, PAD + across];
  const middle = (low + high) / 2;
  const tick = 1.2;
  const { size } = textStyles.note;
  return {
    size: { width: across + 2 * PAD, height: across + 2 * PAD },
    marks: [
      mark(point(low, middle), point(high, middle)),
      mark(point(middle, low), point(middle, high)),
      ...[low, high].map((x) => mark(point(x, middle - tick), point(x, middle + tick))),
      ...[low, high].map((y) => mark(point(middle - tick, y), point(middle + tick, y))),
      text('note', point(middle + 1.5, middle + size * 0.7), [words], size),
    ],
  };
};

const mark = (from: Point, to: Point): Mark => ({ kind: 'line', role: 'mark', path: [line(from, to)] });

/** A cap's name runs on in a second line beyond this, mm. */
const NAME_WIDTH = 60;
const BESIDE = 3;
/** Kept free around a block, mm. */
const PAD = 1.5;

/** What a sheet says of itself: its name, which of how many it is, and the cap it belongs to. */
export const nameBlock = (name: string, count: string, cap: string, room: Size): Block => {
  const big = 8;
  const { size } = textStyles.note;
  const label = textWidth(name, true) * big;
  const most = Math.min(NAME_WIDTH, room.width - label - 6);
  const beside = [count, ...brokenLines(cap, most / size)];
  const width = label + BESIDE + Math.max(...beside.map((s) => textWidth(s))) * size;
  const height = Math.max(big, (beside.length - 1) * LEADING * size + size);
  const middle = height / 2;
  return {
    size: { width: width + 2 * PAD, height: height + 2 * PAD },
    marks: [
      text('title', point(PAD, PAD + middle), [name], big),
      text('note', point(PAD + label + BESIDE, PAD + middle), beside, size),
    ],
  };
};

export const text = (
  role: TextMark['role'],
  at: Point,
  lines: readonly string[],
  size = textStyles[role].size,
): TextMark => ({ kind: 'text', role, at, lines, size, align: 'start', angle: 0 });
