import { beforeAll, describe, expect, it } from 'vitest';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { fetchStyles } from '../../src/caps/registry.ts';
import type { Style } from '../../src/caps/style.ts';
import { areaOf } from '../../src/geometry/area.ts';
import { type Ordinates, ordinatesOf } from '../../src/pattern/ordinates.ts';
import { inches } from '../../src/units.ts';
import { HEADS, outlineOf } from '../caps/family.ts';
import { expectNear } from '../geometry/near.ts';
import { disc, sector, strip } from './sample-pieces.ts';

let styles: readonly Style[] = [];
beforeAll(async () => {
  styles = await fetchStyles();
});

const every = (step: number) => () => step;

/** Area between the ordinates, by the trapezium rule, mm². */
const areaOfOrdinates = ({ ordinates }: Ordinates): number => {
  const across = ordinates.map(({ at, spans }) => ({
    at,
    length: spans.reduce((sum, [from, to]) => sum + to - from, 0),
  }));
  return across
    .slice(1)
    .reduce((sum, { at, length }, i) => sum + ((at - across[i]!.at) * (length + across[i]!.length)) / 2, 0);
};

describe('a piece drawn by hand', () => {
  it('has the half chords of a circle, from the fold out', () => {
    const { half, width, height, along, ordinates } = ordinatesOf(disc(100), every(20));
    expect({ half, along }).toEqual({ half: true, along: 'left side' });
    expectNear(width, 100, 1e-9);
    expectNear(height, 200, 1e-9);
    expect(ordinates.map(({ at }) => at)).toEqual([0, 20, 40, 60, 80, 100, 120, 140, 160, 180, 200]);
    for (const { at, spans } of ordinates) {
      expect(spans).toHaveLength(1);
      expectNear(spans[0]![0], 0, 1e-9);
      expectNear(spans[0]![1], Math.sqrt(100 ** 2 - (at - 100) ** 2), 0.02);
    }
  });

  it('rises along the foot where it is broader than high: a half side band of 13.75 and 16.25 in over 0.8 rad', () => {
    const radii = [13.75, 16.25].map(inches) as [number, number];
    const [inner, outer] = radii;
    const { along, ordinates, height } = ordinatesOf(
      sector(inner * 0.8, outer * 0.8, outer - inner),
      every(inches(1)),
    );
    expect(along).toBe('foot');
    // Its lower edge is the shorter: the box’s foot is touched by the corners of its lower edge, cos 0.4 of the radius down.
    const foot = inner * Math.cos(0.4);
    for (const { at, spans } of ordinates.filter((one) => one.at < inner * Math.sin(0.4) - 1)) {
      expectNear(spans[0]![0], Math.sqrt(inner ** 2 - at ** 2) - foot, 1e-6);
      expectNear(spans[0]![1], Math.sqrt(outer ** 2 - at ** 2) - foot, 1e-6);
    }
    expectNear(height, outer - foot, 1e-6);
  });

  it('is told by its corners alone where all edges are straight', () => {
    const { ordinates, points } = ordinatesOf(strip(560, 40), every(50));
    expect(ordinates).toEqual([]);
    const corners = points.filter(({ name }) => name === 'corner').map(({ right, up }) => [right, up]);
    expect(corners).toEqual([
      [0, 0],
      [280, 0],
      [280, 40],
      [0, 40],
    ]);
  });

  it('of every style encloses what the piece does', () => {
    for (const style of styles)
      for (const piece of style.draft(defaultsOf(style.parameters), HEADS[3]!).pattern.pieces) {
        const drawn = ordinatesOf(piece, (length) => length / 200);
        if (drawn.ordinates.length === 0) continue;
        const area = areaOf(outlineOf(piece)) / (drawn.half ? 2 : 1);
        expectNear(areaOfOrdinates(drawn) / area, 1, 0.001);
      }
  });
});
