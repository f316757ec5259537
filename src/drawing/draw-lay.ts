import { type ClothLay, type LaidPiece, laidCut, laidName } from '../cloth/cloth-lay.ts';
import { layNameLines } from '../cloth/lay-name.ts';
import { boundsOf } from '../geometry/bounds.ts';
import { boxHeight, boxWidth } from '../geometry/box.ts';
import { line, type Path, polygon } from '../geometry/path.ts';
import { add, heading, type Point, point, scale } from '../geometry/point.ts';
import { scaled } from '../geometry/transform.ts';
import type { LineMark, Mark, TextMark } from './drawing.ts';
import { grainMarks } from './marks/grain.ts';
import { lineMark } from './steps/moved-mark.ts';
import { textWidth } from './text-width.ts';

/** Shown of the bolt beyond the last piece, mm of cloth. */
const BEYOND = 40;

/** How much room a lay takes, mm of cloth. */
export const laySize = (lay: ClothLay): { readonly width: number; readonly height: number } => ({
  width: lay.remnant ?? lay.length + (lay.scraps.length > 0 ? 0 : BEYOND),
  height: lay.width,
});

/** A cutting lay, `k` times the size of the cloth, its lower left corner on the origin: cloth, pieces, names and grain. */
export const drawLay = (lay: ClothLay, k: number): readonly Mark[] => [
  ...groundMarks(lay, k),
  ...lay.laid.flatMap((laid) => pieceMarks(laid, k)),
];

const groundMarks = (lay: ClothLay, k: number): readonly LineMark[] => {
  if (lay.scraps.length > 0) {
    return lay.scraps.flatMap(({ scrap, shift }) =>
      [scrap.outline, ...scrap.flaws].map((ring, i) =>
        lineMark(i === 0 ? 'mark' : 'sheet', small(polygon(ring.map((p) => add(p, shift))), k)),
      ),
    );
  }
  const { width: length, height } = laySize(lay);
  const across = (x: number): Path => [line(point(x, 0), point(x, height))];
  const along = (y: number): Path => [line(point(0, y), point(length, y))];
  return [
    lineMark('mark', small(along(height), k)),
    lineMark(lay.folded ? 'fold' : 'mark', small(along(0), k)),
    lineMark('mark', small(across(0), k)),
    lineMark(lay.remnant === null ? 'sheet' : 'mark', small(across(lay.remnant ?? lay.length), k)),
  ];
};

const small = (path: Path, k: number): Path => scaled(path, k, k);

/** The least and the largest that a name is set in, mm to the em. */
const NAMES = { least: 1.6, most: 3.4 };

const pieceMarks = (laid: LaidPiece, k: number): readonly Mark[] => {
  const cut = small(laidCut(laid), k);
  const box = boundsOf(cut);
  const { mirrored, layers } = laid.piece;
  const words = [
    ...layNameLines(laid.piece),
    ...(mirrored && layers !== 'on the fold' ? ['face down'] : []),
    ...(layers === 'one of two' ? ['one layer'] : []),
  ];
  const wide = Math.max(...words.map((line) => textWidth(line)));
  const size = Math.min(
    NAMES.most,
    Math.max(
      NAMES.least,
      Math.min((boxWidth(box) * 0.8) / wide, (boxHeight(box) * 0.8) / (1 + words.length)),
    ),
  );
  const at = scale(laidName(laid), k);
  const name: TextMark = { kind: 'text', role: 'note', at, lines: words, size, align: 'middle', angle: 0 };
  return [
    lineMark('cut', cut),
    name,
    ...(boxHeight(box) > 4 * size ? grainBelow(at, words.length, size, laid.at.rotation) : []),
  ];
};

const grainBelow = (at: Point, lines: number, size: number, turn: number): readonly Mark[] => {
  const middle = point(at.x, at.y - (0.6 * lines + 0.7) * size);
  const half = scale(heading(turn), 1.4 * size);
  return grainMarks([add(middle, scale(half, -1)), add(middle, half)]);
};
