import paper from 'paper/dist/paper-core';
import type { Path } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { paperPath, reshape } from './paper-path.ts';

/** A path, and where its piece lies on the table, mm. */
export interface Lying {
  readonly path: Path;
  readonly at: Point;
}

/** Paths that look alike, as one item of Paper's: each item costs a stroke of its own while a slider moves. */
export interface Shapes {
  readonly item: paper.CompoundPath;
  /** Lays these paths in place of those from before, keeping what has not changed. */
  readonly lay: (paths: readonly Lying[]) => void;
}

export const openShapes = (): Shapes => {
  const item = new paper.CompoundPath({ insert: false });
  let before: readonly Lying[] = [];
  const lay = (paths: readonly Lying[]): void => {
    const items = item.children as paper.Path[];
    if (items.length > paths.length) item.removeChildren(paths.length);
    paths.forEach((now, i) => {
      const [there, was] = [items[i], before[i]];
      if (there === undefined || was === undefined) item.addChild(paperPath(now.path, now.at));
      else if (now.path !== was.path) reshape(there, now.path, now.at);
      else if (now.at !== was.at) there.translate(new paper.Point(now.at.x - was.at.x, was.at.y - now.at.y));
    });
    before = paths;
  };
  return { item, lay };
};
