import { describe, expect, it } from 'vitest';
import { drawPattern, drawPiece } from '../../src/drawing/draw-piece.ts';
import type { LineMark, PieceDrawing, TextMark } from '../../src/drawing/drawing.ts';
import { lineStyles } from '../../src/drawing/roles.ts';
import { blockSize } from '../../src/drawing/text-block.ts';
import { areaOf } from '../../src/geometry/area.ts';
import { boundsOf } from '../../src/geometry/bounds.ts';
import { curveAt } from '../../src/geometry/curve.ts';
import { contains } from '../../src/geometry/inside.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { isClosed, line, type Path, radius } from '../../src/geometry/path.ts';
import { norm, point } from '../../src/geometry/point.ts';
import { cutLine } from '../../src/pattern/cut-line.ts';
import type { Piece } from '../../src/pattern/piece.ts';
import { inches } from '../../src/units.ts';
import { expectNear } from '../geometry/near.ts';
import { allowances, disc, samplePieces, strip, withoutAllowance } from '../pattern/sample-pieces.ts';
import { cap } from './caps.ts';

const table = { unit: 'cm', halves: false, dimensions: false, label: null } as const;
const draw = (piece: Piece, more: object = {}): PieceDrawing =>
  drawPiece(piece, allowances, { ...table, ...more });

const lines = (drawing: PieceDrawing, role: LineMark['role']): LineMark[] =>
  drawing.marks.filter((m): m is LineMark => m.kind === 'line' && m.role === role);
const texts = (drawing: PieceDrawing, role: TextMark['role']): TextMark[] =>
  drawing.marks.filter((m): m is TextMark => m.kind === 'text' && m.role === role);
const corners = (path: Path) => path.map((curve) => curve.from);

describe('a drawn piece', () => {
  it('has its cut line solid outside and its stitch line dashed inside', () => {
    for (const piece of samplePieces) {
      const drawing = draw(piece);
      const [cut] = lines(drawing, 'cut');
      const [stitch] = lines(drawing, 'stitch');
      expect(cut!.path).toEqual(cutLine(piece, allowances).flat());
      expect(stitch!.path).toEqual(piece.outline.flatMap((e) => e.path));
      expect(areaOf(cut!.path)).toBeGreaterThan(areaOf(stitch!.path));
      expect(drawing.silhouette).toEqual(cut!.path);
    }
  });

  it('without allowance has one line, the cut line', () => {
    const drawing = draw(withoutAllowance(disc(60)));
    expect(lines(drawing, 'stitch')).toEqual([]);
    expect(lines(drawing, 'cut')).toHaveLength(1);
  });

  it('has notches as triangles outside the stitch line whose tips touch the cut line, two at the back', () => {
    const drawing = draw(disc(100));
    const triangles = lines(drawing, 'notch').filter((m) => m.filled);
    // Front and two sides once, the back twice: common practice.
    expect(triangles).toHaveLength(5);
    for (const { path } of triangles) {
      expect(isClosed(path)).toBe(true);
      const distances = corners(path).map(norm);
      // Tips on the cut line; those of a double notch stand beside the exact place, on its tangent's side.
      expectNear(Math.max(...distances), 100 + allowances.crown, 1e-6);
      for (const d of distances) expect(d).toBeGreaterThan(99.999);
    }
    const back = triangles.filter(({ path }) => boundsOf(path).max.y < -90);
    expect(back).toHaveLength(2);
    expectNear(
      back.reduce((sum, { path }) => sum + boundsOf(path).min.x + boundsOf(path).max.x, 0),
      0,
      1e-9,
    );
  });

  it('joins a notch to the stitch line by a stem where the allowance is wide', () => {
    const wide = { ...allowances, crown: 15 };
    const notches = lines(drawPiece(disc(100), wide, table), 'notch');
    const stems = notches.filter((m) => !m.filled);
    expect(stems).toHaveLength(5);
    for (const { path } of stems) {
      expectNear(norm(path[0]!.from), 100, 1e-6);
      // A quarter inch of triangle is left: common practice.
      expectNear(norm(path[0]!.to), 115 - inches(0.25), 1e-6);
    }
  });

  it('has a short inward tick for a notch where there is no allowance', () => {
    const notches = lines(draw(withoutAllowance(disc(100))), 'notch');
    expect(notches).toHaveLength(5);
    for (const { path, filled } of notches) {
      expect(filled).toBeUndefined();
      expect(norm(path[0]!.to)).toBeLessThan(97);
    }
  });

  it('has a grainline with an arrowhead at either end', () => {
    const piece = strip(560, 40);
    const [shaft, ...heads] = lines(draw(piece), 'grain');
    expect(corners(shaft!.path)[0]).toEqual(piece.grain[0]);
    expect(heads).toHaveLength(2);
    for (const head of heads) expect(head.filled).toBe(true);
    const { min, max } = boundsOf(heads.flatMap((h) => h.path));
    expect([min.x, max.x]).toEqual([-20, 20]);
  });

  it('marks a button by its circle and a cross, a buttonhole by its slit with end bars', () => {
    const piece = strip(560, 40, {
      marks: [
        { kind: 'button', at: point(100, 10), diameter: 12, name: 'button' },
        { kind: 'buttonhole', from: point(-110, 20), to: point(-95, 20), name: 'buttonhole' },
      ],
    });
    const marks = lines(draw(piece), 'mark').map((m) => m.path);
    const [ring] = marks.filter((p) => p[0]!.kind === 'arc');
    if (ring?.[0]?.kind !== 'arc') throw new Error('the button has no circle');
    expect(radius(ring[0])).toBe(6);
    expect(marks.filter((p) => p[0]!.kind === 'line' && boundsOf(p).min.x > 90)).toHaveLength(2);
    expect(marks.map(pathLength)).toContain(15);
    expect(marks.filter((p) => boundsOf(p).max.x < -90)).toHaveLength(3);
  });

  it('marks a turning gap between two bars and names it inside the piece', () => {
    const gap = { kind: 'stretch', name: 'turning gap', path: [line(point(90, 40), point(10, 40))] } as const;
    const piece = strip(560, 40, { marks: [gap] });
    const drawing = draw(piece);
    const bars = lines(drawing, 'mark').filter(
      ({ path }) => boundsOf(path).min.y < 40 && boundsOf(path).max.y > 40,
    );
    expect(bars.map(({ path }) => path[0]!.from.x).sort((a, b) => a - b)).toEqual([10, 90]);
    const [name] = texts(drawing, 'note');
    expect(name!.lines).toEqual(['turning gap']);
    expect(
      contains(
        piece.outline.flatMap((e) => e.path),
        name!.at,
      ),
    ).toBe(true);
    expect(Math.cos(name!.angle)).toBeGreaterThan(0.99);
  });

  it('shows the words that a piece carries', () => {
    const piece = strip(560, 40, { marks: [{ kind: 'text', text: 'centre', at: point(-200, 20) }] });
    expect(texts(draw(piece), 'note')[0]!.lines).toEqual(['centre']);
  });

  it('carries its dimensions in the reader’s unit when they are asked for', () => {
    const figures = (unit: string) =>
      texts(draw(disc(inches(4)), { unit, dimensions: true }), 'dimension').flatMap((m) => m.lines);
    expect(figures('cm')).toEqual(['20.3 cm']);
    expect(figures('in')).toEqual(['8 in']);
    expect(texts(draw(disc(100)), 'dimension')).toEqual([]);
  });

  it('reaches nowhere beyond its bounds', () => {
    for (const halves of [false, true]) {
      for (const d of drawPattern(cap(), { ...table, dimensions: true, halves })) {
        for (const mark of d.marks) {
          if (mark.kind !== 'line') continue;
          const { min, max } = boundsOf(mark.path);
          expect(min.x).toBeGreaterThanOrEqual(d.bounds.min.x - 1e-6);
          expect(min.y).toBeGreaterThanOrEqual(d.bounds.min.y - 1e-6);
          expect(max.x).toBeLessThanOrEqual(d.bounds.max.x + 1e-6);
          expect(max.y).toBeLessThanOrEqual(d.bounds.max.y + 1e-6);
        }
      }
    }
  });
});

describe('a piece drawn as a half', () => {
  const half = draw(disc(100), { halves: true, dimensions: true });

  it('has a dash-dot fold line along x = 0 from cut line to cut line, and a bracket that points at it', () => {
    const [fold] = lines(half, 'fold');
    expect(boundsOf(fold!.path)).toEqual({
      min: point(0, -100 - allowances.crown),
      max: point(0, 100 + allowances.crown),
    });
    expect(lineStyles.fold.dash).toHaveLength(4);
    const heads = lines(half, 'mark').filter((m) => m.filled);
    expect(heads).toHaveLength(2);
    for (const { path } of heads) expect(boundsOf(path).min.x).toBe(0);
    expect(texts(half, 'note').flatMap((m) => m.lines)).toEqual(['place on fold']);
  });

  it('has its words beside the bracket, not on the centre line that crosses the fold', () => {
    const crossed = { ...disc(100), centreLines: [[line(point(-100, 0), point(100, 0))]] };
    const [words] = texts(draw(crossed, { halves: true }), 'note');
    const { width } = blockSize(words!);
    expect(words!.angle).toBe(Math.PI / 2);
    expect(Math.abs(words!.at.y) - width / 2).toBeGreaterThan(0);
    // As near the middle as they may stand, an em from the line.
    expect(Math.abs(words!.at.y) - width / 2).toBeLessThan(2 * words!.size);
  });

  it('is not cut along the fold', () => {
    const [cut] = lines(half, 'cut');
    expect(isClosed(cut!.path)).toBe(false);
    expect(cut!.path.every((c) => curveAt(c, 0.5).x > 0)).toBe(true);
    expect(isClosed(half.silhouette)).toBe(true);
    expect(half.onFold).toBe(true);
  });

  it('has on the fold the right half of a notch, and of a double notch its right triangle', () => {
    const triangles = lines(half, 'notch').filter((m) => m.filled);
    // Half the front notch, the side, one of two at the back.
    expect(triangles).toHaveLength(3);
    for (const { path } of triangles) expect(boundsOf(path).min.x).toBeGreaterThanOrEqual(0);
    const areas = triangles.map(({ path }) => Math.abs(areaOf(path))).sort((a, b) => a - b);
    expectNear(areas[0]! * 2, areas[1]!, 0.01 * areas[1]!);
    expectNear(areas[1]!, areas[2]!, 0.01 * areas[1]!);
  });

  it('gives a distance across the fold as the whole', () => {
    expect(texts(half, 'dimension').flatMap((m) => m.lines)).toEqual(['20.0 cm whole']);
  });

  it('leaves a piece that is not symmetric whole', () => {
    const whole = draw({ ...disc(100), foldable: false }, { halves: true });
    expect(whole.onFold).toBe(false);
    expect(lines(whole, 'fold')).toEqual([]);
  });
});
