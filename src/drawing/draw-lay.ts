import { type ClothLay, type LaidPiece, laidCut } from '../cloth/cloth-lay.ts';
import { line, type Path, polygon } from '../geometry/path.ts';
import { add, point, scale } from '../geometry/point.ts';
import { scaled } from '../geometry/transform.ts';
import type { LineMark, Mark, TextMark } from './drawing.ts';
import { laidLabel } from './laid-label.ts';
import { grainMarks } from './marks/grain.ts';
import { lineMark } from './steps/moved-mark.ts';

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

/** The least and the largest that a name is set in, mm of paper to the em. */
const NAMES = { least: 1.6, most: 3.4 };

const pieceMarks = (laid: LaidPiece, k: number): readonly Mark[] => {
  const { lines, size, at, grain } = laidLabel(laid, { least: NAMES.least / k, most: NAMES.most / k });
  const name: TextMark = {
    kind: 'text',
    role: 'note',
    at: scale(at, k),
    lines,
    size: size * k,
    align: 'middle',
    angle: 0,
  };
  return [
    lineMark('cut', small(laidCut(laid), k)),
    name,
    ...(grain ? grainMarks([scale(grain[0], k), scale(grain[1], k)]) : []),
  ];
};
