import { pathLength } from '../geometry/measure.ts';
import { SAME_POINT, SEAM } from '../geometry/tolerance.ts';
import type { Notch, Piece } from './piece.ts';
import type { EdgeUse } from './seam.ts';

/** A notch on a chain of edges, mm from its start. */
export interface Stop {
  readonly at: number;
  readonly count: 1 | 2;
  /** Which notch of which piece it is. */
  readonly name: string;
}

/** A chain of edges laid out straight: its length, the notches on it and the joints between its edges, both ends included. */
export interface Side {
  readonly length: number;
  readonly stops: readonly Stop[];
  readonly joints: readonly number[];
}

/** Gives what walks along chains of these pieces' edges. Throws a RangeError where a chain names an edge that is not there. */
export const walker = (pieces: readonly Piece[]): ((chain: readonly EdgeUse[]) => Side) => {
  const known = new Map(pieces.map((piece) => [piece.id, piece]));
  const lengths = new Map(
    pieces.flatMap((p) => p.outline.map((e) => [`${p.id}.${e.name}`, pathLength(e.path)] as const)),
  );
  return (chain) => {
    let length = 0;
    const stops: Stop[] = [];
    const joints = [0];
    for (const use of chain) {
      const piece = known.get(use.piece);
      const whole = lengths.get(`${use.piece}.${use.edge}`);
      if (!piece || whole === undefined) throw new RangeError(`no edge ${use.piece}.${use.edge} to sew`);
      const [from, to] = [use.from ?? 0, use.to ?? whole];
      for (const notch of piece.notches) {
        if (notch.edge !== use.edge) continue;
        const along = use.backwards ? whole - notch.at : notch.at;
        if (along < from - SEAM || along > to + SEAM) continue;
        stops.push({ at: length + along - from, count: notch.count, name: `${piece.name}, ${notch.name}` });
      }
      length += to - from;
      joints.push(length);
    }
    return { length, stops, joints };
  };
};

/** The stretch of a chain between two distances from its start, mm. */
export const stretchOf = (
  pieces: readonly Piece[],
  chain: readonly EdgeUse[],
  from: number,
  to: number,
): readonly EdgeUse[] => {
  const walk = walker(pieces);
  let reached = 0;
  return chain.flatMap((use) => {
    const { length } = walk([use]);
    const [start, end] = [Math.max(from - reached, 0), Math.min(to - reached, length)];
    reached += length;
    const first = use.from ?? 0;
    return end - start > SAME_POINT ? [{ ...use, from: first + start, to: first + end }] : [];
  });
};

/** The same side on what is longer or shorter by a ratio. */
export const sideScaled = ({ length, stops, joints }: Side, by: number): Side => ({
  length: length * by,
  stops: stops.map((stop) => ({ ...stop, at: stop.at * by })),
  joints: joints.map((at) => at * by),
});

/**
 * The notches that an edge needs to be sewn to a side: one for each of its notches and for each joint within it. Its own
 * ends meet the side's.
 */
export const notchesToMeet = (edge: string, side: Side): readonly Notch[] => {
  const isWithin = (at: number): boolean => at > SEAM && at < side.length - SEAM;
  const stops = side.stops.filter(({ at }) => isWithin(at));
  const within = side.joints.filter(isWithin);
  const bare = within.filter((at) => !stops.some((stop) => Math.abs(stop.at - at) <= SEAM));
  const meeting = new Map(stops.map((stop) => [Math.round(stop.at / SEAM), stop] as const));
  return [
    ...[...meeting.values()].map(({ at, count, name }) => ({
      edge,
      at,
      count,
      name: name.replace(/^.*, /, ''),
    })),
    ...bare.map((at): Notch => ({ edge, at, count: 1, name: 'seam' })),
  ].sort((a, b) => a.at - b.at);
};
