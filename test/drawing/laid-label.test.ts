import { describe, expect, test } from 'vitest';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { fetchStyles } from '../../src/caps/registry.ts';
import { type ClothLay, clothLay, laidPolygon } from '../../src/cloth/cloth-lay.ts';
import { layPieces } from '../../src/cloth/lay-pieces.ts';
import { layTask } from '../../src/cloth/lay-task.ts';
import { defaultSpec } from '../../src/design/default-spec.ts';
import { laidLabel } from '../../src/drawing/laid-label.ts';
import { blockSize } from '../../src/drawing/text-block.ts';
import { add, direction, type Point, point, subtract } from '../../src/geometry/point.ts';
import { improving } from '../../src/nesting/improve.ts';
import { derive } from '../design/derive.ts';

const SIZES = { least: 8, most: 20 };

const layOf = (style: string, values: object, folded: boolean): ClothLay => {
  const { cutting } = derive({ ...defaultSpec, cap: { style, name: '', values } as never }).draft!;
  const spec = { ...defaultSpec.cloths.outer, cross: true, folded };
  const wish = { caps: [{ name: '', cutting, count: 1 }], cloth: 'outer', spec } as const;
  const pieces = layPieces(wish);
  return clothLay(wish, pieces, improving(layTask(pieces, spec), 1).next().value.layout);
};

/** Whether a point lies inside a ring: an odd number of its sides pass to the right of it. */
const isInside = ({ x, y }: Point, ring: readonly Point[]): boolean =>
  ring.filter((a, i) => {
    const b = ring[(i + 1) % ring.length]!;
    return a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x);
  }).length %
    2 ===
  1;

describe('the label of a piece on the cloth', async () => {
  const lays = (await fetchStyles()).flatMap((style) =>
    [false, true].map((folded) => layOf(style.id, defaultsOf(style.parameters), folded)),
  );
  const labels = lays.flatMap(({ laid }) => laid.map((one) => ({ laid: one, label: laidLabel(one, SIZES) })));

  test('lies within the cut line with its grainline, which runs as the grain does', () => {
    const alone = new Set<string>();
    for (const { laid, label } of labels) {
      const ring = laidPolygon(laid);
      const { lines, size, at, grain } = label;
      if (grain === null) {
        alone.add(laid.piece.piece.id);
        continue;
      }
      const { width, height } = blockSize({ lines, size, role: 'note' });
      const corners = [-1, 1].flatMap((u) =>
        [-1, 1].map((v) => add(at, point((u * width) / 2, (v * height) / 2))),
      );
      for (const p of [...corners, ...grain]) expect(isInside(p, ring), lines.join()).toBe(true);
      const off = Math.sin(direction(subtract(grain[1], grain[0])) - laid.at.rotation);
      expect(off).toBeCloseTo(0, 9);
    }
    // Too small for more than a name.
    expect([...alone].sort()).toEqual(['archBinding', 'backStrap', 'topButton']);
    expect(labels.length).toBeGreaterThan(100);
  });

  test('keeps name and grainline apart', () => {
    for (const { label } of labels) {
      const { lines, size, at, grain } = label;
      if (grain === null) continue;
      const { width, height } = blockSize({ lines, size, role: 'note' });
      const [from, to] = grain;
      const clear =
        Math.max(from.y, to.y) < at.y - height / 2 || Math.min(from.x, to.x) > at.x + width / 2 - 1e-9;
      expect(clear, lines.join()).toBe(true);
    }
  });

  test('tells what is cut face down', () => {
    const down = labels.filter(({ laid }) => laid.piece.mirrored && laid.piece.layers === 'single');
    expect(down.length).toBeGreaterThan(0);
    for (const { label } of down) expect(label.lines).toContain('face down');
  });
});
