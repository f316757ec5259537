import { type Floor, stand, takeUp } from './floor.ts';

/** How the parts stood at a moment; used again and again, so that a long search keeps no more than it began with. */
export interface Snapshot {
  readonly stance: Int32Array;
  readonly room: Int32Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
}

export const snapshotOf = (f: Floor): Snapshot => {
  const shot = {
    stance: new Int32Array(f.parts),
    room: new Int32Array(f.parts),
    x: new Float64Array(f.parts),
    y: new Float64Array(f.parts),
  };
  record(f, shot);
  return shot;
};

export const record = (f: Floor, shot: Snapshot): void => {
  shot.stance.set(f.stance.subarray(0, f.parts));
  shot.room.set(f.room.subarray(0, f.parts));
  shot.x.set(f.x.subarray(0, f.parts));
  shot.y.set(f.y.subarray(0, f.parts));
};

export const restore = (f: Floor, shot: Snapshot): void => {
  for (let i = 0; i < f.parts; i++) {
    if (shot.room[i]! < 0) takeUp(f, i);
    else stand(f, i, shot.stance[i]!, shot.x[i]!, shot.y[i]!, shot.room[i]!);
  }
};
