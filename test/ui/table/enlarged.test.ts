import { describe, expect, it } from 'vitest';
import { gored } from '../../../src/caps/gored/gored.ts';
import { goredParameters } from '../../../src/caps/gored/parameters.ts';
import { defaultsOf } from '../../../src/caps/parameter.ts';
import { drawPattern, drawPiece } from '../../../src/drawing/draw-piece.ts';
import type { PieceDrawing, TextMark } from '../../../src/drawing/drawing.ts';
import { blockSize } from '../../../src/drawing/text-block.ts';
import { boundsOf } from '../../../src/geometry/bounds.ts';
import { contains } from '../../../src/geometry/inside.ts';
import { crossings } from '../../../src/geometry/intersect.ts';
import { polygon } from '../../../src/geometry/path.ts';
import { point } from '../../../src/geometry/point.ts';
import { enlarged } from '../../../src/ui/table/enlarged.ts';
import { HEADS } from '../../caps/family.ts';
import { allowances, crescent, strip } from '../../pattern/sample-pieces.ts';

const options = { unit: 'cm', halves: false, dimensions: false, label: null } as const;
const titleOf = (drawing: PieceDrawing): TextMark =>
  drawing.marks.find((m): m is TextMark => m.kind === 'text' && m.role === 'title')!;
const span = (mark: TextMark): [number, number] => {
  expect(mark.align).toBe('middle');
  const half = blockSize(mark).width / 2;
  return [mark.at.x - half, mark.at.x + half];
};
const grainOf = (drawing: PieceDrawing) =>
  boundsOf(drawing.marks.flatMap((m) => (m.kind === 'line' && m.role === 'grain' ? m.path : [])));

describe('a name enlarged to be read from afar', () => {
  it('stays inside the sides of its piece and beside the grainline, at every size that has room', () => {
    for (const piece of [crescent(190, 40, 55), strip(560, 40)]) {
      const drawing = drawPiece(piece, allowances, options);
      const grain = grainOf(drawing);
      for (let size = 6; size < 24; size += 2) {
        const [from, to] = span(enlarged(titleOf(drawing), size, drawing)!);
        expect(from).toBeGreaterThanOrEqual(drawing.bounds.min.x - 1e-9);
        expect(to).toBeLessThanOrEqual(drawing.bounds.max.x + 1e-9);
        expect(to < grain.min.x || from > grain.max.x).toBe(true);
      }
    }
  });

  it('keeps off the stitch lines of narrow gores for a small child, at every size that has room', () => {
    const head = HEADS[0]!;
    const { pattern } = gored.draft(defaultsOf(goredParameters), head);
    const gores = drawPattern(pattern, options).filter(({ id }) => /gore/i.test(id));
    expect(gores).toHaveLength(2);
    for (const drawing of gores) {
      const stitch = drawing.marks.flatMap((m) => (m.kind === 'line' && m.role === 'stitch' ? m.path : []));
      for (const size of [6, 7, 8, 9, 10]) {
        const shown = enlarged(titleOf(drawing), size, drawing)!;
        const { width, height } = blockSize(shown);
        const corner = (u: number, v: number) => point(shown.at.x + u * width, shown.at.y + v * height);
        const [low, high] = [-1 / 2, 1 / 2];
        const frame = polygon([corner(low, low), corner(high, low), corner(high, high), corner(low, high)]);
        expect(crossings(frame, stitch), `${drawing.id} ${size}`).toEqual([]);
        expect(contains(stitch, shown.at)).toBe(true);
      }
    }
  });

  it('is left out where it is wider than its piece', () => {
    const drawing = drawPiece(strip(60, 40), allowances, options);
    expect(enlarged(titleOf(drawing), 80, drawing)).toBeNull();
  });

  it('grows about its middle where nothing is in the way', () => {
    const drawing = drawPiece(strip(560, 40), allowances, options);
    const title = titleOf(drawing);
    const shown = enlarged(title, title.size * 1.5, drawing)!;
    expect(shown.at.x).toBeCloseTo(title.at.x + blockSize(title).width / 2, 9);
    expect(shown.at.y).toBe(title.at.y);
  });
});
