import { describe, expect, it } from 'vitest';
import type { Layout } from '../../src/nesting/layout.ts';
import type { Placement, Task } from '../../src/nesting/task.ts';
import { faultsOf } from './checker.ts';
import { INSTANCES, instanceOf, ownLength, publishedOf } from './instances.ts';

const changed = (layout: Layout, at: number, change: Partial<Placement>): Layout => ({
  ...layout,
  placements: layout.placements.map((one, i) => (i === at ? { ...one, ...change } : one)),
});

describe.each(INSTANCES)('the published layout of %s', (name) => {
  const instance = instanceOf(name);
  const { task, layout } = publishedOf(instance);

  it('passes the check, and no longer when one piece is shifted into its neighbours or left out', () => {
    expect(faultsOf(task, layout)).toEqual([]);
    expect(Math.abs(ownLength(instance, layout.length!) - instance.best.length)).toBeLessThan(
      0.001 + 1e-5 * instance.best.length,
    );
    const k = Math.floor(layout.placements.length / 2);
    const { x, y, piece } = layout.placements[k]!;
    const shifted = [1, -1].map((by) =>
      faultsOf(task, changed(layout, k, { x: x + by * 10, y: y + by * 7 })),
    );
    expect(shifted.flat().filter((fault) => /too close|stands out/.test(fault))).not.toEqual([]);
    const fewer = { ...layout, placements: layout.placements.filter((_, i) => i !== k) };
    expect(faultsOf(task, fewer)).toContain(`${piece} is answered 0 times`);
  });
});

describe('the check of a layout', () => {
  const square = (id: string) => ({
    id,
    polygon: [
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 10, y: 10 },
      { x: 0, y: 10 },
    ],
    rotations: [0],
  });
  const task: Task = {
    ground: { kind: 'strip', width: 20, length: null },
    pieces: [square('a'), square('b')],
    spacing: 0,
    edgeSpacing: 0,
    pinned: [],
  };
  const at = (piece: string, x: number, y: number, rotation = 0, container = 0): Placement => ({
    piece,
    container,
    rotation,
    x,
    y,
  });
  const sound: Layout = {
    placements: [at('a', 0, 0), at('b', 0, 10)],
    unplaced: [],
    length: 10,
    density: 1,
  };
  const areas: Task = {
    ...task,
    edgeSpacing: 1,
    ground: {
      kind: 'areas',
      areas: [
        {
          outline: [
            { x: 0, y: 0 },
            { x: 60, y: 0 },
            { x: 0, y: 60 },
          ],
          flaws: [square('').polygon],
        },
      ],
    },
  };
  const inAreas = (a: Placement, b: Placement): Layout => ({
    placements: [a, b],
    unplaced: [],
    length: null,
    density: 0.1,
  });

  it('passes pieces that touch, and pieces a hair into each other', () => {
    expect(faultsOf(task, sound)).toEqual([]);
    expect(faultsOf(task, changed(sound, 1, { y: 9.97 }))).toEqual([]);
  });

  it.each([
    ['pieces further into each other', task, changed(sound, 1, { y: 9.9 }), 'a and b are too close'],
    [
      'pieces without their spacing',
      { ...task, spacing: 1 },
      changed(sound, 1, { x: 10.9, y: 0 }),
      'a and b are too close',
    ],
    ['a piece over the side', task, changed(sound, 1, { y: 10.1 }), 'b stands out'],
    ['a piece on the selvedge', { ...task, edgeSpacing: 2 }, sound, 'b stands out'],
    ['a piece before the start', task, changed(sound, 1, { x: -0.1 }), 'b stands out'],
    [
      'a piece beyond the end',
      { ...task, ground: { kind: 'strip', width: 20, length: 9 } },
      sound,
      'a stands out',
    ],
    [
      'a turn that is not allowed',
      task,
      changed(sound, 0, { rotation: Math.PI / 2, x: 10 }),
      'a is turned as it may not be',
    ],
    ['a piece twice', task, { ...sound, unplaced: ['a'] }, 'a is answered 2 times'],
    ['a piece nobody asked for', task, { ...sound, unplaced: ['c'] }, 'nobody asked for c'],
    ['a pin left', { ...task, pinned: [at('a', 3, 0)] }, sound, 'a has left its pin'],
    ['a wrong length', task, { ...sound, length: 11 }, 'the length is another'],
    ['a wrong density', task, { ...sound, density: 0.9 }, 'the density is another'],
    ['a piece over the slant', areas, inAreas(at('a', 12, 12), at('b', 40, 12)), 'b stands out'],
    ['a piece on a flaw', areas, inAreas(at('a', 10.5, 2), at('b', 24, 12)), 'a stands out'],
    ['a piece in no area', areas, inAreas(at('a', 12, 12), at('b', 24, 12, 0, 1)), 'b lies in no area'],
  ] as const)('finds %s', (_, asked, answer, fault) => {
    expect(faultsOf(asked as Task, answer as Layout)).toContain(fault);
  });

  it('passes pieces that keep clear of slant, edge and flaw', () => {
    expect(faultsOf(areas, inAreas(at('a', 12, 2), at('b', 24, 12)))).toEqual([]);
  });
});
