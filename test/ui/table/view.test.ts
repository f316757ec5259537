import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { point } from '../../../src/geometry/point.ts';
import {
  fitted,
  kept,
  pulled,
  seesAll,
  toTable,
  toWindow,
  type View,
  zoomed,
} from '../../../src/ui/table/view.ts';
import { expectNear, expectSamePoint } from '../../geometry/near.ts';

const size = { width: 900, height: 600 };
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const views: fc.Arbitrary<View> = fc.record({
  centre: fc.record({ x: number(-500, 500), y: number(-500, 500) }),
  scale: number(0.1, 20),
});
const pixels = fc.record({ x: number(0, 900), y: number(0, 600) });

describe('the view of the table', () => {
  it('takes a pixel to a spot and the spot back to the pixel', () => {
    fc.assert(
      fc.property(views, pixels, (view, px) => {
        expectSamePoint(toWindow(view, size, toTable(view, size, px)), px, 1e-6);
      }),
    );
  });

  it('has y upwards on the table and downwards in the window', () => {
    const view = { centre: point(0, 0), scale: 2 };
    expectSamePoint(toTable(view, size, point(450, 300)), point(0, 0));
    expectSamePoint(toTable(view, size, point(550, 200)), point(50, 50));
  });

  it('zooms with the spot under the pointer staying under it', () => {
    fc.assert(
      fc.property(views, pixels, number(0.2, 5), (view, px, factor) => {
        const spot = toTable(view, size, px);
        expectSamePoint(toWindow(zoomed(view, size, factor, px), size, spot), px, 1e-6);
      }),
    );
  });

  it('neither loses the pieces in the distance nor goes into the thread', () => {
    const view = { centre: point(0, 0), scale: 1 };
    expect(zoomed(view, size, 1e-9, point(0, 0)).scale).toBeGreaterThan(0.01);
    expect(zoomed(view, size, 1e9, point(0, 0)).scale).toBeLessThan(100);
  });

  it('is pulled along with the hand', () => {
    const view = { centre: point(10, 10), scale: 2 };
    const spot = toTable(view, size, point(100, 100));
    expectSamePoint(toWindow(pulled(view, 30, -12), size, spot), point(130, 88));
  });

  it('frames everything, with room around it and the foot of the table kept free', () => {
    fc.assert(
      fc.property(number(1, 2000), number(1, 2000), number(-500, 500), (w, h, x) => {
        const box = { min: point(x, -h), max: point(x + w, 0) };
        const view = fitted(box, size, 50);
        expect(seesAll(view, size, box)).toBe(true);
        expect(toWindow(view, size, box.min).y).toBeLessThanOrEqual(size.height - 50);
      }),
    );
  });

  it('frames nothing, or in no window, without losing its head', () => {
    const nothing = { min: point(Infinity, Infinity), max: point(-Infinity, -Infinity) };
    expect(fitted(nothing, size)).toEqual({ centre: point(0, 0), scale: 1 });
    expect(fitted({ min: point(0, 0), max: point(1, 1) }, { width: 0, height: 0 }).scale).toBe(1);
    expect(kept({ centre: point(5, 5), scale: 1 }, nothing).centre).toEqual(point(5, 5));
  });

  it('cannot be pushed so far that no piece is near its middle', () => {
    const box = { min: point(0, -100), max: point(200, 0) };
    const view = kept({ centre: point(900, 400), scale: 1 }, box);
    expectSamePoint(view.centre, point(200, 0));
  });

  it('knows when a piece has grown out of it', () => {
    const box = { min: point(0, -100), max: point(200, 0) };
    const view = fitted(box, size);
    expect(seesAll(view, size, box)).toBe(true);
    expect(seesAll(view, size, { ...box, max: point(260, 0) })).toBe(false);
    expectNear(view.scale, Math.min((900 - 80) / 200, (600 - 72) / 100), 1e-9);
  });
});
