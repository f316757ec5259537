import type { Point } from '../../src/geometry/point.ts';
import type { NestPiece } from '../../src/nesting/task.ts';

/** Points on an arc about (0, 0), a chord every 6 mm or so: as curves come to be laid. */
const arc = (radius: number, from: number, to: number): readonly Point[] => {
  const count = Math.max(4, Math.ceil((radius * Math.abs(to - from)) / 6));
  return Array.from({ length: count + 1 }, (_, k) => {
    const angle = from + ((to - from) * k) / count;
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
  });
};

/** Between two arcs about one centre. */
const sector = (inner: number, outer: number, sweep: number): readonly Point[] => [
  ...arc(outer, -sweep / 2, sweep / 2),
  ...arc(inner, sweep / 2, -sweep / 2),
];

/** Two arcs that meet in points: a leaf, like a gore or a visor's half. */
const leaf = (length: number, width: number): readonly Point[] => {
  const radius = (length * length) / (4 * width) + width / 4;
  const half = Math.asin(length / (2 * radius));
  const side = arc(radius, -half, half).map(({ x, y }) => ({ x: x - radius * Math.cos(half), y }));
  return [...side, ...side.slice(1, -1).map(({ x, y }) => ({ x: -x, y: -y }))];
};

/**
 * As many outlines as asked for, of the sizes that adult caps have (tip, gores, side band, visor, band, stand; from
 * memory), drawn larger or smaller by a factor.
 */
export const capPieces = (count: number, factor: number): readonly NestPiece[] => {
  const kinds = [
    arc(85, 0, 2 * Math.PI).slice(0, -1),
    sector(200, 260, 1.4),
    sector(200, 260, 1.4),
    sector(95, 155, 2.1),
    sector(95, 155, 2.1),
    leaf(210, 90),
    leaf(210, 90),
    leaf(210, 90),
    leaf(210, 90),
    sector(1500, 1540, 0.2),
  ];
  return Array.from({ length: count }, (_, k) => ({
    id: `${k}`,
    polygon: kinds[k % kinds.length]!.map(({ x, y }) => ({ x: x * factor, y: y * factor })),
    rotations: [0, Math.PI],
  }));
};
