import type { Point } from '../../src/geometry/point.ts';

type Random = () => number;

/** A star-shaped ring about its origin: corners at growing angles, near and far. Counter-clockwise, mostly concave. */
export const star = (random: Random, corners: number, size: number): readonly Point[] =>
  Array.from({ length: corners }, (_, i) => {
    const angle = ((i + 0.8 * random()) / corners) * 2 * Math.PI;
    const radius = size * (0.25 + 0.75 * random());
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) };
  });

/** A bent band: an arc as wide as it is told, like a strap or a peak. */
export const arch = (random: Random, size: number): readonly Point[] => {
  const [inner, outer] = [size * (0.3 + 0.5 * random()), size];
  const sweep = 1 + 3.5 * random();
  const count = 4 + Math.floor(6 * random());
  const at = (radius: number, i: number): Point => ({
    x: radius * Math.cos((sweep * i) / count),
    y: radius * Math.sin((sweep * i) / count),
  });
  const there = Array.from({ length: count + 1 }, (_, i) => at(outer, i));
  const back = Array.from({ length: count + 1 }, (_, i) => at(inner, count - i));
  return [...there, ...back];
};

export const rectangle = (width: number, height: number): readonly Point[] => [
  { x: 0, y: 0 },
  { x: width, y: 0 },
  { x: width, y: height },
  { x: 0, y: height },
];

/** A letter of straight strokes, with edges that run together and gaps that another one may fit exactly. */
export const letter = (random: Random, unit: number): readonly Point[] => {
  const [w, h] = [3 + Math.floor(4 * random()), 3 + Math.floor(4 * random())];
  const [cut, deep] = [1 + Math.floor((w - 2) * random()), 1 + Math.floor((h - 1) * random())];
  const corners: readonly (readonly [number, number])[] = [
    [0, 0],
    [w, 0],
    [w, h],
    [w - 1, h],
    [w - 1, h - deep],
    [w - 1 - cut, h - deep],
    [w - 1 - cut, h],
    [0, h],
  ];
  return corners
    .filter(([x, y], i) => i === 0 || x !== corners[i - 1]![0] || y !== corners[i - 1]![1])
    .map(([x, y]) => ({ x: x * unit, y: y * unit }));
};

/** Any of them: large, tiny, long. */
export const anyOutline = (random: Random, size: number): readonly Point[] => {
  const kind = random();
  if (kind < 0.35) return star(random, 3 + Math.floor(9 * random()), size * (0.1 + 0.5 * random()));
  if (kind < 0.55) return arch(random, size * (0.2 + 0.5 * random()));
  if (kind < 0.7) return letter(random, (size / 6) * (0.2 + 0.6 * random()));
  if (kind < 0.85) return rectangle(size * (0.5 + random()), size * 0.05 * (1 + random()));
  return star(random, 3, size * 0.05);
};
