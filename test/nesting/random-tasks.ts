import type { Point } from '../../src/geometry/point.ts';
import type { Area, NestPiece, Placement, Task } from '../../src/nesting/task.ts';
import { anyOutline, arch, rectangle, star } from './random-outlines.ts';

type Random = () => number;

const TURNS: readonly (readonly number[])[] = [
  [0],
  [0, Math.PI],
  [0, Math.PI / 2, Math.PI, -Math.PI / 2],
  [Math.PI / 4, (5 * Math.PI) / 4, 0.3],
];

const any = <T>(random: Random, list: readonly T[]): T => list[Math.floor(random() * list.length)]!;

/** From two to nine pieces, some of them alike, shifted about in their own frames. */
export const randomPieces = (random: Random, size: number): readonly NestPiece[] => {
  const outlines = Array.from({ length: 2 + Math.floor(4 * random()) }, () => {
    const [dx, dy] = [size * (random() - 0.5), size * (random() - 0.5)];
    return anyOutline(random, size).map(({ x, y }) => ({ x: x + dx, y: y + dy }));
  });
  return outlines.flatMap((polygon, k) =>
    Array.from({ length: 1 + Math.floor(2 * random()) }, (_, copy) => ({
      id: `${k}.${copy}`,
      polygon,
      rotations: any(random, TURNS),
    })),
  );
};

const shifted = (outline: readonly Point[], dx: number, dy: number): readonly Point[] =>
  outline.map(({ x, y }) => ({ x: x + dx, y: y + dy }));

/** A scrap: a star, a bent band or a sheet, with up to two flaws. */
const randomArea = (random: Random, size: number): Area => {
  const outline = any(random, [
    () => star(random, 5 + Math.floor(8 * random()), size * 1.6),
    () => arch(random, size * 1.8),
    () => rectangle(size * (1 + random()), size * (1 + random())),
  ])();
  const flaws = Array.from({ length: Math.floor(3 * random()) }, () =>
    shifted(star(random, 5, size * 0.15), size * 0.9 * random(), size * 0.9 * random()),
  );
  return { outline, flaws };
};

/** A task of any kind: strips with and without an end, scraps with flaws, with and without spacing and a pin. */
export const randomTask = (random: Random): Task => {
  const size = 120;
  const kind = random();
  const spacing = random() < 0.5 ? 0 : 6 * random();
  const edgeSpacing = random() < 0.5 ? 0 : 8 * random();
  const width = size * (0.8 + random());
  const strip = { kind: 'strip', width, length: kind < 0.4 ? null : size * (0.5 + 2 * random()) } as const;
  const areas = { kind: 'areas', areas: [randomArea(random, size), randomArea(random, size)] } as const;
  const pieces = randomPieces(random, size);
  const pin: Placement = {
    piece: pieces[0]!.id,
    container: Math.floor(1.5 * random()) % 2,
    rotation: 6 * random(),
    x: width * random(),
    y: width * random(),
  };
  return {
    ground: kind < 0.6 ? strip : areas,
    pieces,
    spacing,
    edgeSpacing,
    // Wherever it was dropped, even half over the edge.
    pinned: random() < 0.3 ? [kind < 0.6 ? { ...pin, container: 0 } : pin] : [],
  };
};
