import type { Point } from '../../src/geometry/point.ts';
import type { Layout } from '../../src/nesting/layout.ts';
import type { Area, NestPiece, Placement, Task } from '../../src/nesting/task.ts';
import { between, common, grown, isThinner, placed, type Solid, solidOf, without } from './solid.ts';

/** What may overlap or stand out, mm: no disc of this width fits in it. The bound the lay promises. */
const TOLERANCE = 0.05;

interface Laid {
  readonly piece: NestPiece;
  readonly placement: Placement;
  readonly corners: readonly Point[];
  readonly solid: Solid;
}

/** Everything wrong with a layout, a sentence each; none when it holds. Knows nothing of how layouts are made. */
export const faultsOf = (task: Task, layout: Layout, tolerance = TOLERANCE): readonly string[] => {
  const pieces = new Map(task.pieces.map((piece) => [piece.id, piece]));
  const laid = layout.placements.flatMap((placement): Laid[] => {
    const piece = pieces.get(placement.piece);
    if (piece === undefined) return [];
    const corners = placed(piece.polygon, placement);
    return [{ piece, placement, corners, solid: solidOf(corners) }];
  });
  return [
    ...wrongCounts(task, layout),
    ...laid.filter((one) => !isPinned(task, one)).flatMap(wrongTurn),
    ...laid.filter((one) => !isPinned(task, one)).flatMap((one) => standingOut(task, one, tolerance)),
    ...tooClose(task, laid, tolerance),
    ...wrongMeasures(task, layout, laid, tolerance),
  ];
};

const isPinned = ({ pinned }: Task, { piece, placement }: Laid): boolean =>
  pinned.some((pin) => pin.piece === piece.id && JSON.stringify(pin) === JSON.stringify(placement));

const wrongCounts = ({ pieces, pinned }: Task, { placements, unplaced }: Layout): readonly string[] => {
  const named = [...placements.map(({ piece }) => piece), ...unplaced];
  const known = new Set(pieces.map(({ id }) => id));
  return [
    ...pieces.flatMap(({ id }) => {
      const times = named.filter((name) => name === id).length;
      return times === 1 ? [] : [`${id} is answered ${times} times`];
    }),
    ...named.filter((id) => !known.has(id)).map((id) => `nobody asked for ${id}`),
    ...pinned
      .filter((pin) => !placements.some((one) => JSON.stringify(one) === JSON.stringify(pin)))
      .map(({ piece }) => `${piece} has left its pin`),
  ];
};

const wrongTurn = ({ piece, placement }: Laid): readonly string[] => {
  const allowed = piece.rotations.some((turn) => {
    const off = (placement.rotation - turn) / (2 * Math.PI);
    return Math.abs(off - Math.round(off)) < 1e-9;
  });
  return allowed ? [] : [`${piece.id} is turned as it may not be`];
};

const standingOut = (task: Task, one: Laid, tolerance: number): readonly string[] => {
  const { ground, edgeSpacing } = task;
  const wrong = [`${one.piece.id} stands out`];
  if (ground.kind === 'strip') {
    const within = one.corners.every(
      ({ x, y }) =>
        x >= -tolerance &&
        x <= (ground.length ?? Infinity) + tolerance &&
        y >= edgeSpacing - tolerance &&
        y <= ground.width - edgeSpacing + tolerance,
    );
    return within ? [] : wrong;
  }
  const area = ground.areas[one.placement.container];
  if (area === undefined) return [`${one.piece.id} lies in no area`];
  const outside = without(one.solid, roomIn(area, edgeSpacing));
  return isThinner(outside, tolerance) ? [] : wrong;
};

const roomIn = ({ outline, flaws }: Area, edge: number): Solid =>
  flaws.reduce(
    (room, flaw) => without(room, edge > 0 ? grown(solidOf(flaw), edge) : solidOf(flaw)),
    edge > 0 ? grown(solidOf(outline), -edge) : solidOf(outline),
  );

const tooClose = (task: Task, laid: readonly Laid[], tolerance: number): readonly string[] =>
  laid.flatMap((a, i) =>
    laid.slice(i + 1).flatMap((b) => {
      if (a.placement.container !== b.placement.container || farApart(a, b, task.spacing)) return [];
      if (isPinned(task, a) && isPinned(task, b)) return [];
      const clear =
        task.spacing > tolerance
          ? between(a.solid, b.solid) >= task.spacing - tolerance
          : isThinner(common(a.solid, b.solid), tolerance);
      return clear ? [] : [`${a.piece.id} and ${b.piece.id} are too close`];
    }),
  );

const farApart = (a: Laid, b: Laid, spacing: number): boolean => {
  const span = ({ corners }: Laid, axis: 'x' | 'y') => {
    const all = corners.map((p) => p[axis]);
    return [Math.min(...all), Math.max(...all)] as const;
  };
  return (['x', 'y'] as const).some((axis) => {
    const [[a0, a1], [b0, b1]] = [span(a, axis), span(b, axis)];
    return a0 > b1 + spacing || b0 > a1 + spacing;
  });
};

const wrongMeasures = (task: Task, layout: Layout, laid: readonly Laid[], tolerance: number) => {
  if (task.ground.kind !== 'strip') return layout.length === null ? [] : ['areas have no length'];
  const length = Math.max(0, ...laid.flatMap(({ corners }) => corners.map(({ x }) => x)));
  const area = laid.reduce((sum, { solid }) => sum + solid.getArea(), 0);
  const density = length > 0 ? area / (length * task.ground.width) : 0;
  return [
    ...(Math.abs((layout.length ?? Number.NaN) - length) <= tolerance ? [] : ['the length is another']),
    ...(Math.abs(layout.density - density) <= 1e-3 ? [] : ['the density is another']),
  ];
};
