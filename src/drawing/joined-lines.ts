import type { Point } from '../geometry/point.ts';

interface Line<Role extends string> {
  readonly role: Role;
  readonly points: readonly Point[];
}

/** Lines of two points that go on from another of the same role, to about 0.02 mm, are made one with it. */
export const joinedLines = <Role extends string>(lines: readonly Line<Role>[]): readonly Line<Role>[] => {
  const key = ({ x, y }: Point, role: Role) => `${role} ${Math.round(x * 50)} ${Math.round(y * 50)}`;
  const open = new Map<string, Point[]>();
  const done: { role: Role; points: Point[] }[] = [];
  for (const { role, points } of lines) {
    const [start, end] = [points[0]!, points.at(-1)!];
    const before = open.get(key(start, role));
    if (before && before.at(-1) !== undefined && points.length === 2) {
      open.delete(key(start, role));
      before.push(...points.slice(1));
      open.set(key(end, role), before);
      continue;
    }
    const turned = open.get(key(end, role));
    if (turned && points.length === 2) {
      open.delete(key(end, role));
      turned.push(start);
      open.set(key(start, role), turned);
      continue;
    }
    const fresh = [...points];
    done.push({ role, points: fresh });
    if (points.length === 2) open.set(key(end, role), fresh);
  }
  return done;
};
