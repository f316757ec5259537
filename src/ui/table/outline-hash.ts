import type { Placed } from '../../drawing/arrange.ts';

const START = 0x811c9dc5;
const PRIME = 0x01000193;

/** A short mark of the outlines on the table (FNV-1a over their points to 0.01 mm): it changes when they do. */
export const outlineHash = (placed: readonly Placed[]): string => {
  let hash = START;
  const take = (n: number): void => {
    hash = Math.imul(hash ^ Math.round(n * 100), PRIME);
  };
  for (const { drawing } of placed) {
    for (const curve of drawing.silhouette) {
      take(curve.to.x);
      take(curve.to.y);
    }
  }
  return (hash >>> 0).toString(36);
};
