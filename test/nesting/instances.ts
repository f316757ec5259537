import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Layout } from '../../src/nesting/layout.ts';
import type { Placement, Task } from '../../src/nesting/task.ts';
import { placed } from './solid.ts';

/** A public test set with the best layout published for it; see the page beside the data for its sources. */
export interface Instance {
  readonly name: string;
  readonly stripWidth: number;
  readonly allowedRotationsDeg: readonly number[];
  readonly totalArea: number;
  readonly items: readonly {
    readonly id: number;
    readonly count: number;
    readonly polygon: readonly (readonly [number, number])[];
  }[];
  readonly best: {
    readonly length: number;
    readonly stripWidthUsed: number;
    readonly density: number;
    readonly placements: readonly {
      readonly item: number;
      readonly rotationDeg: number;
      readonly x: number;
      readonly y: number;
    }[];
  };
}

export const INSTANCES = [
  'albano',
  'blaz1',
  'dagli',
  'fu',
  'jakobs1',
  'jakobs2',
  'mao',
  'marques',
  'shapes0',
  'shapes1',
  'shirts',
  'swim',
  'trousers',
] as const;

export const instanceOf = (name: string): Instance =>
  JSON.parse(readFileSync(join(import.meta.dirname, `../reference/nesting/${name}.json`), 'utf8'));

/** A usual width of cloth, mm: the sets come in units of their own, and the tolerances here are for cloth. */
const CLOTH = 1500;

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const factorOf = ({ stripWidth }: Instance): number => CLOTH / stripWidth;

/** The set drawn so large that its strip is as wide as cloth. */
export const taskOf = (instance: Instance): Task => {
  const factor = factorOf(instance);
  const rotations = instance.allowedRotationsDeg.map(radians);
  return {
    ground: { kind: 'strip', width: CLOTH, length: null },
    spacing: 0,
    edgeSpacing: 0,
    pinned: [],
    pieces: instance.items.flatMap(({ id, count, polygon }) =>
      Array.from({ length: count }, (_, copy) => ({
        id: `${id}.${copy}`,
        polygon: polygon.map(([x, y]) => ({ x: x * factor, y: y * factor })),
        rotations,
      })),
    ),
  };
};

/** A length in the set's own units. */
export const ownLength = (instance: Instance, length: number): number => length / factorOf(instance);

/** The published layout in the same size, with the task it answers: its strip may be a little wider. */
export const publishedOf = (instance: Instance): { readonly task: Task; readonly layout: Layout } => {
  const factor = factorOf(instance);
  const { stripWidthUsed, density } = instance.best;
  const copies = new Map<number, number>();
  const placements = instance.best.placements.map(({ item, rotationDeg, x, y }): Placement => {
    const copy = copies.get(item) ?? 0;
    copies.set(item, copy + 1);
    return {
      piece: `${item}.${copy}`,
      container: 0,
      rotation: radians(rotationDeg),
      x: x * factor,
      y: y * factor,
    };
  });
  const task: Task = {
    ...taskOf(instance),
    ground: { kind: 'strip', width: stripWidthUsed * factor, length: null },
  };
  const outlines = new Map(task.pieces.map(({ id, polygon }) => [id, polygon]));
  const ends = placements.flatMap((one) => placed(outlines.get(one.piece)!, one).map(({ x }) => x));
  return { task, layout: { placements, unplaced: [], length: Math.max(...ends), density } };
};
