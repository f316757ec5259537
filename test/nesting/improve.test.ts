import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { describe, expect, it } from 'vitest';
import { improving, type Progress } from '../../src/nesting/improve.ts';
import { randomFrom } from '../../src/nesting/random.ts';
import type { Task } from '../../src/nesting/task.ts';
import { faultsOf } from './checker.ts';
import { instanceOf, taskOf } from './instances.ts';
import { rectangle } from './random-outlines.ts';
import { randomPieces, randomTask } from './random-tasks.ts';

/** Sets drawn at random; `NESTING_SETS=1000` for the long run. */
const SETS = Number(process.env.NESTING_SETS ?? 40);

/** Every report up to a number of them. */
const reports = (task: Task, seed: number, count: number): readonly Progress[] => {
  const search = improving(task, seed);
  const found: Progress[] = [];
  for (let k = 0; k < count; k++) {
    const { value, done } = search.next();
    found.push(value);
    if (done === true) break;
  }
  return found;
};

describe('pieces of any shape on any ground', () => {
  it('never overlap nor stand out, whenever the search is left', { timeout: SETS * 1000 }, () => {
    const random = randomFrom(11);
    let laid = 0;
    for (let k = 0; k < SETS; k++) {
      const task = randomTask(random);
      const all = reports(task, k, 1 + Math.floor(12 * random()));
      for (const layout of new Set(all.map((one) => one.layout)))
        expect({ k, faults: faultsOf(task, layout) }).toEqual({ k, faults: [] });
      laid += all.at(-1)!.layout.placements.length;
    }
    expect(laid).toBeGreaterThan(3 * SETS);
  });
});

describe('a search', () => {
  const task: Task = {
    ground: { kind: 'strip', width: 150, length: null },
    pieces: randomPieces(randomFrom(5), 100),
    spacing: 2,
    edgeSpacing: 5,
    pinned: [],
  };

  it('gives an answer at its first report and never a longer one after', () => {
    const lengths = reports(task, 1, 80).map(({ layout }) => layout.length!);
    expect(lengths[0]).toBeGreaterThan(0);
    expect(lengths.every((length, k) => k === 0 || length <= lengths[k - 1]!)).toBe(true);
    expect(lengths.at(-1)).toBeLessThan(lengths[0]!);
  });

  it('gives the same for the same seed, and something else for another', () => {
    const [a, b, c] = [7, 7, 8].map((seed) => reports(task, seed, 60).map(({ layout }) => layout));
    expect(a).toEqual(b);
    expect(c).not.toEqual(a);
  });

  it('does even work between two reports', () => {
    const looked = reports(task, 1, 60).map((one) => one.looked);
    expect(looked.slice(1).every((sum, k) => sum - looked[k]! < 40_000)).toBe(true);
  });

  // More than will go in: the search for places never ends.
  const crowded: Task = {
    ...task,
    ground: { kind: 'areas', areas: [0, 1].map(() => ({ outline: rectangle(130, 130), flaws: [] })) },
    pieces: Array.from({ length: 9 }, (_, k) => ({
      id: `${k}`,
      polygon: rectangle(59, 59),
      rotations: [0, 0.3],
    })),
  };

  it.each([
    ['on a strip', taskOf(instanceOf('fu'))],
    ['on areas', crowded],
  ])('holds no more memory the longer it runs %s', (_, of) => {
    setFlagsFromString('--expose-gc');
    const collect = runInNewContext('gc') as () => void;
    const search = improving(of, 1);
    const heldAfter = (count: number): number => {
      for (let k = 0; k < count; k++) search.next();
      collect();
      return process.memoryUsage().heapUsed;
    };
    const early = heldAfter(60);
    expect(heldAfter(120) - early).toBeLessThan(1e6);
  });
});

describe('a ground', () => {
  const square = (id: string, side: number, rotations: readonly number[] = [0]) => ({
    id,
    polygon: rectangle(side, side),
    rotations,
  });
  const task = (change: Partial<Task>): Task => ({
    ground: { kind: 'strip', width: 100, length: null },
    pieces: [square('a', 50), square('b', 50), square('c', 50), square('d', 50)],
    spacing: 0,
    edgeSpacing: 0,
    pinned: [],
    ...change,
  });
  const answer = (change: Partial<Task>, count = 40) => {
    const asked = task(change);
    const all = reports(asked, 1, count);
    const { layout } = all.at(-1)!;
    expect(faultsOf(asked, layout)).toEqual([]);
    return { layout, ended: all.length < count };
  };

  it('that four squares fill exactly is filled, and the search ends', () => {
    const { layout, ended } = answer({});
    expect(Math.abs(layout.length! - 100)).toBeLessThan(0.05);
    expect(ended).toBe(true);
  });

  it('too small for all says which piece found no place', () => {
    const { layout } = answer({ ground: { kind: 'strip', width: 100, length: 99 } });
    expect(layout.unplaced).toHaveLength(2);
    expect(layout.placements).toHaveLength(2);
  });

  it('lets a piece too wide for it be, and lays the rest', () => {
    const { layout } = answer({ pieces: [square('a', 50), square('wide', 101)] });
    expect(layout.unplaced).toEqual(['wide']);
    expect(layout.placements.map(({ piece }) => piece)).toEqual(['a']);
  });

  it('keeps spacing and selvedge: two squares of 45 with 4 between and 3 at the edges fill 100', () => {
    const pieces = [square('a', 45), square('b', 45)];
    const lengthAt = (spacing: number) => answer({ pieces, spacing, edgeSpacing: 3 }).layout.length!;
    expect(Math.abs(lengthAt(4) - 45)).toBeLessThan(0.05);
    expect(Math.abs(lengthAt(4.2) - 94.2)).toBeLessThan(0.05);
  });

  it('leaves pins where they are, turned as they are, and lays the rest round them', () => {
    const pin = { piece: 'b', container: 0, rotation: 0.3, x: 40, y: 20 };
    const { layout } = answer({ pinned: [pin] });
    expect(layout.placements).toContainEqual(pin);
    expect(layout.placements).toHaveLength(4);
  });

  it('of two scraps takes what fits in each', () => {
    const l = [
      [0, 0],
      [120, 0],
      [120, 55],
      [55, 55],
      [55, 120],
      [0, 120],
    ].map(([x, y]) => ({ x: x!, y: y! }));
    const areas = [
      { outline: l, flaws: [] },
      { outline: rectangle(60, 60), flaws: [] },
    ];
    const { layout, ended } = answer({ ground: { kind: 'areas', areas } });
    expect(layout.unplaced).toEqual([]);
    expect(ended).toBe(true);
    expect(layout.placements.filter(({ container }) => container === 0)).toHaveLength(3);
  });

  describe('of several scraps', () => {
    const scraps = (...sizes: readonly (readonly [number, number])[]) => ({
      kind: 'areas' as const,
      areas: sizes.map(([width, height]) => ({ outline: rectangle(width, height), flaws: [] })),
    });
    const used = ({ placements }: Progress['layout']) =>
      [...new Set(placements.map(({ container }) => container))].sort();

    it('is left whole where the others hold all', () => {
      const ground = scraps([60, 60], [70, 60], [160, 110]);
      // One after the other they go into the first that has room.
      expect(used(answer({ ground }, 1).layout)).toEqual([0, 1, 2]);
      const { layout, ended } = answer({ ground }, 200);
      expect(used(layout)).toEqual([2]);
      expect(layout.unplaced).toEqual([]);
      expect(ended).toBe(true);
    });

    it('is used as far as it has to be', () => {
      // By their areas all four would go into the larger, but not as they are.
      const { layout, ended } = answer({ ground: scraps([60, 60], [99, 160]) }, 200);
      expect(used(layout)).toEqual([0, 1]);
      expect(layout.unplaced).toEqual([]);
      expect(ended).toBe(true);
    });

    it('is kept where something is pinned on it', () => {
      const pinned = [{ piece: 'b', container: 0, rotation: 0, x: 2, y: 2 }];
      const { layout } = answer({ ground: scraps([60, 60], [55, 55], [160, 110]), pinned }, 200);
      expect(used(layout)).toEqual([0, 2]);
      expect(layout.placements).toContainEqual(pinned[0]);
    });
  });

  it('with a flaw in the middle takes fewer', () => {
    const flaw = rectangle(10, 10).map(({ x, y }) => ({ x: x + 45, y: y + 45 }));
    const whole = { outline: rectangle(100, 100), flaws: [] };
    expect(answer({ ground: { kind: 'areas', areas: [whole] } }).layout.unplaced).toEqual([]);
    const flawed = { ...whole, flaws: [flaw] };
    expect(answer({ ground: { kind: 'areas', areas: [flawed] } }).layout.placements.length).toBeLessThan(2);
  });

  it.each([
    ['a strip without a width', { ground: { kind: 'strip', width: 0, length: null } }],
    ['a strip of no length', { ground: { kind: 'strip', width: 100, length: Number.NaN } }],
    ['a spacing below nothing', { spacing: -1 }],
    ['two pieces of one name', { pieces: [square('a', 10), square('a', 10)] }],
    ['a piece without an area', { pieces: [square('a', 0)] }],
    ['a pin without its piece', { pinned: [{ piece: 'z', container: 0, rotation: 0, x: 0, y: 0 }] }],
  ] as const)('is refused: %s', (_, change) => {
    expect(() => improving(task(change as Partial<Task>), 1).next()).toThrow(RangeError);
  });

  it('with no pieces is answered at once', () => {
    const { layout, ended } = answer({ pieces: [] });
    expect(layout).toEqual({ placements: [], unplaced: [], length: 0, density: 0 });
    expect(ended).toBe(true);
  });
});
