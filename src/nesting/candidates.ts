/** The few best places found for a part: cost, stance, x, y, room each, the cheapest first. */
export interface Candidates {
  readonly count: number;
  readonly cost: Float64Array;
  readonly stance: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly room: Int32Array;
}

export const candidates = (count: number): Candidates => ({
  count,
  cost: new Float64Array(count),
  stance: new Int32Array(count),
  x: new Float64Array(count),
  y: new Float64Array(count),
  room: new Int32Array(count),
});

/** The cost above which a place is not kept. */
export const bar = (all: Candidates): number => all.cost[all.count - 1]!;

/** Keeps a place that is cheaper than the dearest one kept, which goes. */
export const keep = (all: Candidates, cost: number, stance: number, x: number, y: number, room: number) => {
  let at = all.count - 1;
  for (; at > 0 && all.cost[at - 1]! > cost; at--) {
    all.cost[at] = all.cost[at - 1]!;
    all.stance[at] = all.stance[at - 1]!;
    all.x[at] = all.x[at - 1]!;
    all.y[at] = all.y[at - 1]!;
    all.room[at] = all.room[at - 1]!;
  }
  all.cost[at] = cost;
  all.stance[at] = stance;
  all.x[at] = x;
  all.y[at] = y;
  all.room[at] = room;
};
