import { describe, expect, test } from 'vitest';
import type { FormStrip } from '../../src/caps/form.ts';
import { formPicture } from '../../src/drawing/form-picture.ts';
import { boxHeight, boxWidth } from '../../src/geometry/box.ts';
import { point3 } from '../../src/geometry/space.ts';

const ROUND = Array.from({ length: 121 }, (_, i) => (i / 120) * 2 * Math.PI);
const ring = (r: number, z: number) => ROUND.map((t) => point3(r * Math.cos(t), r * Math.sin(t), z));
const band = (top: number, foot: number): FormStrip => ({
  piece: 'band',
  copy: 0,
  strip: { left: ring(90, top), right: ring(90, foot) },
});
const tip: FormStrip = {
  piece: 'tip',
  copy: 0,
  strip: {
    left: ROUND.slice(0, 61).map((t) => point3(-90 * Math.sin(t), -90 * Math.cos(t), 50)),
    right: ROUND.slice(0, 61).map((t) => point3(90 * Math.sin(t), -90 * Math.cos(t), 50)),
  },
};

describe('the small drawing of a form', () => {
  test('is as wide as the cap, and shows the outside alone', () => {
    const { box, patches } = formPicture({ strips: [band(50, 0)] });
    // A cylinder is seen 2r wide; of its side the half that is turned to the eye.
    expect(boxWidth(box)).toBeGreaterThan(175);
    expect(boxWidth(box)).toBeLessThan(180.01);
    const area = (d: string) => {
      const points = d
        .slice(1, -1)
        .split('L')
        .map((p) => p.split(' ').map(Number));
      return Math.abs(
        points.reduce((sum, [x, y], i) => {
          const [p, q] = points[(i + 1) % points.length]!;
          return sum + x! * q! - p! * y!;
        }, 0) / 2,
      );
    };
    const seen = patches.reduce((sum, d) => sum + area(d), 0);
    // Its near side covers width × height as the eye sees it, and the bow of the two ellipses cancels.
    expect(seen / (180 * 50 * Math.cos(0.42))).toBeGreaterThan(0.93);
    expect(seen / (180 * 50 * Math.cos(0.42))).toBeLessThan(1.01);
  });

  test('draws what is higher over what is lower', () => {
    const { patches } = formPicture({ strips: [tip, band(50, 0)] });
    const { patches: alone } = formPicture({ strips: [tip] });
    expect(patches.at(-1)).toBe(alone[0]);
  });

  test('shows both faces of a brim, and of anything else only the outer', () => {
    const brim = { ...band(0, -40), strip: { left: ring(90, 0), right: ring(150, -15) } };
    const closed = formPicture({ strips: [brim] });
    const open = formPicture({ strips: [{ ...brim, open: true }] });
    expect(boxHeight(open.box)).toBeGreaterThanOrEqual(boxHeight(closed.box));
    expect(open.patches.length).toBeGreaterThanOrEqual(closed.patches.length);
  });
});
