import { describe, expect, it } from 'vitest';
import { drawPiece } from '../../../src/drawing/draw-piece.ts';
import type { PieceDrawing, TextMark } from '../../../src/drawing/drawing.ts';
import { blockSize } from '../../../src/drawing/text-block.ts';
import { boundsOf } from '../../../src/geometry/bounds.ts';
import { enlarged } from '../../../src/ui/table/enlarged.ts';
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
