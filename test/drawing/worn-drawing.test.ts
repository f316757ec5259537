import { describe, expect, test } from 'vitest';
import { wornDrawing } from '../../src/drawing/worn-drawing.ts';
import { boxHeight, boxWidth } from '../../src/geometry/box.ts';
import type { Point } from '../../src/geometry/point.ts';
import { views } from '../../src/worn/gaze.ts';
import { headForm } from '../../src/worn/head-form.ts';
import { netOf } from '../../src/worn/net.ts';
import type { Worn } from '../../src/worn/put-on.ts';

const head = headForm({ girth: 560, ratio: 0.8, arc: 315 });

/** A straight band from height to height, of some half breadth and half length, worn by the head. */
const bandOf = (halfBreadth: number, halfLength: number, from: number, to: number): Worn => {
  const ring = (z: number) =>
    Array.from({ length: 181 }, (_, i) => {
      const t = -Math.PI / 2 + (i * 2 * Math.PI) / 180;
      return { x: halfBreadth * Math.cos(t), y: halfLength * Math.sin(t), z };
    });
  return {
    sheets: [netOf({ piece: 'band', copy: 0, strip: { left: ring(to), right: ring(from) } })],
    head,
    lift: 0,
  };
};

const lengthOf = (points: readonly Point[]): number =>
  points.slice(1).reduce((sum, p, i) => sum + Math.hypot(p.x - points[i]!.x, p.y - points[i]!.y), 0);

const capOnly = (worn: Worn, view: keyof typeof views) =>
  wornDrawing(worn, views[view]).lines.filter(({ role }) => role === 'edge');

const spanOf = (lines: readonly { readonly points: readonly Point[] }[]) => {
  const points = lines.flatMap((one) => one.points);
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return {
    width: Math.max(...xs) - Math.min(...xs),
    height: Math.max(...ys) - Math.min(...ys),
  };
};

describe('the drawing of a cap that is worn', () => {
  const worn = bandOf(85, 105, 0, 40);

  test('is an elevation: as broad from the front, as long from the side, as high from both', () => {
    for (const [view, wide] of [
      ['front', 170],
      ['back', 170],
      ['side', 210],
    ] as const) {
      const { width, height } = spanOf(capOnly(worn, view));
      expect(Math.abs(width - wide), view).toBeLessThan(0.5);
      expect(Math.abs(height - 40), view).toBeLessThan(0.5);
    }
    const { width, height } = spanOf(capOnly(worn, 'top'));
    expect(Math.abs(width - 170)).toBeLessThan(0.5);
    expect(Math.abs(height - 210)).toBeLessThan(0.5);
  });

  test('leaves out what is hidden: the seam behind is seen from the back alone', () => {
    const upright = (view: 'front' | 'back') =>
      capOnly(worn, view).some(({ points }) =>
        points.some((p, i) => {
          const q = points[i + 1];
          return q !== undefined && Math.abs(p.x) < 2 && Math.abs(q.x) < 2 && Math.abs(p.y - q.y) > 1;
        }),
      );
    expect(upright('back')).toBe(true);
    expect(upright('front')).toBe(false);
  });

  test('does not show the head through the band, and shows it below', () => {
    const { lines } = wornDrawing(worn, views.front);
    const headPoints = lines.filter(({ role }) => role === 'head').flatMap(({ points }) => points);
    expect(headPoints.some(({ y }) => y < -20)).toBe(true);
    expect(headPoints.some(({ x, y }) => y > 3 && y < 37 && Math.abs(x) < 80)).toBe(false);
  });

  test('lies in the shade on the side that turns from the light, which comes from above on the left', () => {
    const shade = wornDrawing(worn, views.front).lines.filter(({ role }) => role === 'shade');
    const by = (side: 1 | -1) =>
      shade
        .filter(({ points }) => points[0]!.x * side > 0)
        .reduce((sum, { points }) => sum + lengthOf(points), 0);
    expect(by(1)).toBeGreaterThan(2 * by(-1));
  });

  test('shows from below what lies within, and not the head; from elsewhere nothing of it', () => {
    const [lining] = bandOf(84, 104, 0, 30).sheets;
    const lined: Worn = { ...worn, sheets: [...worn.sheets, { ...lining!, lining: true }] };
    const into = wornDrawing(lined, views.inside).lines;
    expect(into.some(({ role }) => role === 'head')).toBe(false);
    // The inner band's upper edge, a millimetre within: nowhere but there does a line run 84 mm to the right.
    const reach = (lines: typeof into) => lines.flatMap(({ points }) => points.map(({ x }) => x));
    expect(reach(into).some((x) => Math.abs(x - 84) < 0.1)).toBe(true);
    // The lining's upper edge stands 30 mm high.
    for (const view of ['front', 'side', 'back'] as const) {
      const points = capOnly(lined, view).flatMap((one) => one.points);
      expect(points.length, view).toBeGreaterThan(0);
      expect(
        points.some(({ x, y }) => Math.abs(x) > 3 && Math.abs(x) < 70 && Math.abs(y - 30) < 1),
        view,
      ).toBe(false);
    }
  });

  test('has a box about all its lines', () => {
    const { box, lines } = wornDrawing(worn, views.side);
    const { width, height } = spanOf(lines);
    expect(boxWidth(box)).toBeCloseTo(width, 9);
    expect(boxHeight(box)).toBeCloseTo(height, 9);
  });

  test('draws a button by its rim alone', () => {
    const ring = (r: number, z: number) =>
      Array.from({ length: 73 }, (_, i) => ({
        x: r * Math.cos((i * Math.PI) / 36),
        y: r * Math.sin((i * Math.PI) / 36),
        z,
      }));
    const disc = netOf({ piece: 'tip', copy: 0, strip: { left: ring(0, 200), right: ring(10, 198) } });
    const drawnLength = (sheet: Worn['sheets'][number]) =>
      capOnly({ sheets: [sheet], head, lift: 0 }, 'top').reduce(
        (sum, { points }) => sum + lengthOf(points),
        0,
      );
    // Seen from above nothing of it turns away: 2π · 10 mm round, and without a disc's name 10 mm there and back.
    expect(Math.abs(drawnLength({ ...disc, disc: 'button' }) - 20 * Math.PI)).toBeLessThan(0.3);
    expect(Math.abs(drawnLength(disc) - 20 * Math.PI - 20)).toBeLessThan(0.3);
  });
});
