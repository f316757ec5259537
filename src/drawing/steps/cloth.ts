import { line, polygon } from '../../geometry/path.ts';
import { point } from '../../geometry/point.ts';
import { grainMarks } from '../marks/grain.ts';
import { SMALLEST_TEXT } from '../roles.ts';
import { lineMark } from './moved-mark.ts';
import type { Picture } from './shown.ts';

const [WIDE, TALL] = [70, 34];
/** How far in the woven edges reach. */
const SELVEDGE = 2;

/** A length of cloth as it comes from the bolt, its woven edges, and the way its grain runs. mm on paper. */
export const cloth: Picture = {
  width: WIDE,
  height: TALL,
  marks: [
    lineMark('cut', polygon([point(0, 0), point(WIDE, 0), point(WIDE, TALL), point(0, TALL)])),
    ...[SELVEDGE, TALL - SELVEDGE].map((y) => lineMark('mark', [line(point(0, y), point(WIDE, y))])),
    ...grainMarks([point(WIDE * 0.2, TALL / 2), point(WIDE * 0.8, TALL / 2)]),
    ...[
      { words: 'grain', y: TALL / 2 + SMALLEST_TEXT },
      { words: 'woven edge', y: SELVEDGE + SMALLEST_TEXT },
    ].map(({ words, y }) => ({
      kind: 'text' as const,
      role: 'note' as const,
      at: point(WIDE / 2, y),
      lines: [words],
      size: SMALLEST_TEXT,
      align: 'middle' as const,
      angle: 0,
    })),
  ],
};
