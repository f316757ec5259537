import { describe, expect, test } from 'vitest';
import { coaxingOf } from '../../src/caps/coaxing.ts';
import { point3 } from '../../src/geometry/space.ts';
import type { Strip } from '../../src/geometry/strip.ts';

const steps = Array.from({ length: 61 }, (_, i) => i / 60);
const one = (strip: Strip) => coaxingOf({ strips: [{ piece: 'side', copy: 0, strip }] })[0]!;

describe('how hard cloth must be coaxed', () => {
  test('a cone takes its shape by itself', () => {
    const ring = (r: number, z: number) =>
      steps.map((t) => point3(r * Math.cos(3 * t), r * Math.sin(3 * t), z));
    const cone = one({ left: ring(105, 60), right: ring(89, 0) });
    expect(cone.effort).toBe('none');
    expect(Math.abs(cone.surplus)).toBeLessThan(1e-4);
  });

  test('a saddle must be steamed, by what its integrals say it is too large', () => {
    // z = xy/c over the square |x|, |y| ≤ a = c. Rolled flat from edge to edge it is ∫ 2√(2 + y²) dy large, in parts
    // of a²; the smooth saddle is ∬ √(1 + x² + y²) dx dy.
    const middles = Array.from({ length: 400 }, (_, i) => (i + 0.5) / 200 - 1);
    const mean = (f: (n: number) => number) => middles.reduce((sum, n) => sum + f(n), 0) / middles.length;
    const flat = 4 * mean((y) => Math.sqrt(2 + y * y));
    const smooth = 4 * mean((y) => mean((x) => Math.sqrt(1 + x * x + y * y)));
    const [a, c] = [60, 60];
    const rail = (x: number) => steps.map((t) => point3(x, a * (2 * t - 1), (x * a * (2 * t - 1)) / c));
    const saddle = one({ left: rail(-a), right: rail(a) });
    expect(saddle.effort).toBe('steam');
    expect(saddle.surplus / (flat / smooth - 1)).toBeGreaterThan(0.98);
    expect(saddle.surplus / (flat / smooth - 1)).toBeLessThan(1.02);
  });

  test('each piece is told once, and a likeness of something bought not at all', () => {
    const strip: Strip = {
      left: [point3(0, 0, 0), point3(0, 9, 0)],
      right: [point3(9, 0, 0), point3(9, 9, 0)],
    };
    const told = coaxingOf({
      strips: [
        { piece: 'tip', copy: 0, strip },
        { piece: 'tip', copy: 1, strip },
        { piece: 'visor', copy: 0, strip, likeness: true },
      ],
    });
    expect(told.map(({ piece }) => piece)).toEqual(['tip']);
  });
});
