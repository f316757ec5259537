import type { EdgeUse } from '../../../pattern/seam.ts';
import type { Span } from './brim-slope.ts';

/** A copy of a brim piece where it lies in the ring; `turned` where it is cut face down. */
export interface Place extends Span {
  readonly piece: string;
  readonly copy: number;
  readonly turned: boolean;
}

/** A layer of the brim, going round from the centre back, counter-clockwise seen from above. */
export interface BrimLayer {
  readonly inner: readonly EdgeUse[];
  readonly outer: readonly EdgeUse[];
  readonly joins: readonly { readonly name: string; readonly a: EdgeUse; readonly b: EdgeUse }[];
}

const JOINTS: readonly (readonly [number, string])[] = [
  [0, 'centre back'],
  [1 / 4, 'side'],
  [1 / 3, 'beside the front'],
  [1 / 2, 'centre front'],
  [2 / 3, 'beside the front'],
  [3 / 4, 'side'],
];
const jointName = (at: number): string =>
  JOINTS.find(([place]) => Math.abs(place - (at % 1)) < 1e-9)?.[1] ?? 'joint';

/** The layer that places make which follow each other round; the first may lie across the centre back. */
export const brimLayer = (
  places: readonly Place[],
  length: (piece: string, edge: string) => number,
): BrimLayer => {
  const round = (edge: 'inner' | 'outer'): readonly EdgeUse[] => {
    const uses = places.map(({ piece, copy, turned }): EdgeUse => {
      const backwards = (edge === 'inner') !== turned;
      return { piece, copy, edge, backwards };
    });
    const [first, ...rest] = uses;
    if (places[0]!.from === 0) return uses;
    const whole = length(first!.piece, edge);
    return [{ ...first!, from: whole / 2, to: whole }, ...rest, { ...first!, from: 0, to: whole / 2 }];
  };
  const end = ({ piece, copy, turned }: Place, side: 'left' | 'right'): EdgeUse => {
    const edge = turned ? (side === 'left' ? 'right' : 'left') : side;
    return { piece, copy, edge, backwards: edge === 'left' };
  };
  return {
    inner: round('inner'),
    outer: round('outer'),
    joins: places.map((place, i) => ({
      name: jointName(place.to),
      a: end(place, 'right'),
      b: end(places[(i + 1) % places.length]!, 'left'),
    })),
  };
};
