import { point } from '../../geometry/point.ts';
import type { Pattern } from '../../pattern/pattern.ts';
import type { Mark, TextMark } from '../drawing.ts';
import { SMALLEST_TEXT } from '../roles.ts';
import { cloth } from './cloth.ts';
import { flat } from './flat.ts';
import { movedMarks } from './moved-mark.ts';
import { hem, section } from './section.ts';
import type { Picture, Shown } from './shown.ts';
import type { Size } from './size.ts';
import { nameOfCopy, soFar } from './so-far.ts';
import { together } from './together.ts';

/** Of a drawing, mm on paper: as wide as a column of a booklet. */
export const STEP_WIDTH = 86;
const PIECES = 46;
const CAP = { width: 36, height: 31 };

/**
 * The drawing of a step, from the real pieces and the real form: what is laid on what, where it is sewn, how it is
 * pressed, and how far the cap has come. The same for screen and paper. Null where there is nothing to see.
 */
export const stepDrawing = (shown: Shown, pattern: Pattern): Picture | null => {
  if (shown.show === 'cloth') return stacked([[cloth]]);
  if (shown.show === 'hem')
    return stacked([[hem(shown.topstitched, isBrimmed(pattern)), ...wholeCap(shown, CAP)]]);
  if (shown.show === 'cap') return stacked([wholeCap(shown, { width: 60, height: 46 })]);
  if (shown.show === 'together') return stacked(sewing(shown, pattern));
  const pieces = shown.pieces.flatMap((id) => pattern.pieces.find((piece) => piece.id === id) ?? []);
  if (pieces.length === 0) return null;
  return flat(pieces, pattern.allowances, shown, {
    width: STEP_WIDTH,
    height: shown.pieces.length > 4 ? 90 : PIECES,
  });
};

const isBrimmed = ({ pieces }: Pattern): boolean => pieces.some(({ id }) => id.startsWith('brim'));

const wholeCap = ({ form }: Shown, room: Size): readonly Picture[] => {
  const cap = soFar(form, form.strips.map(nameOfCopy), [], room);
  return cap ? [cap] : [];
};

const nameIn = (pattern: Pattern, id: string): string =>
  (pattern.pieces.find((piece) => piece.id === id)?.name ?? id).replace(/, (front|back)$/, '');

/** The pieces laid together with their names, then how the seam is pressed beside the cap so far. */
const sewing = (shown: Shown, pattern: Pattern): readonly (readonly Picture[])[] => {
  const seam = pattern.seams.find(({ id }) => id === shown.seams[0]);
  if (seam === undefined) return [];
  const picture = together(
    seam,
    pattern.pieces,
    pattern.allowances,
    { width: STEP_WIDTH, height: PIECES },
    shown.facing,
    shown.onTop,
  );
  const [below, above] = [nameIn(pattern, picture.below), nameIn(pattern, picture.above)];
  const words =
    below === above
      ? [`${below}, folded or in two layers, ${shown.facing} sides together.`]
      : layers(shown.facing, above.toLowerCase(), below.toLowerCase());
  const cap = soFar(shown.form, shown.joined, shown.news, CAP);
  const stands = shown.form.strips.some((strip) => shown.news.includes(nameOfCopy(strip)));
  return [
    [picture],
    [caption(words)],
    [...pressing(shown, pattern, picture.below, picture.above), ...(cap && stands ? [cap] : [])],
  ];
};

const layers = (facing: Shown['facing'], above: string, below: string): readonly string[] =>
  facing === 'right'
    ? [`On top, face down: ${above}.`, `Below, face up: ${below}.`]
    : [`On top, face up: ${above}.`, `Below, face down: ${below}.`];

const pressing = (
  { press, topstitched }: Shown,
  pattern: Pattern,
  belowId: string,
  aboveId: string,
): readonly Picture[] => {
  if (press === null) return [];
  const [below, above] = [nameIn(pattern, belowId), nameIn(pattern, aboveId)];
  const names = [below, below === above ? '' : above] as const;
  if (press === 'open') return [section(...names, 'open', topstitched, 'pressed open')];
  const towards = nameIn(pattern, press.towards);
  const side = towards === below ? 'left' : 'right';
  return [section(...names, side, topstitched, `pressed to the ${towards.toLowerCase()}`)];
};

const caption = (lines: readonly string[]): Picture => {
  const height = lines.length * SMALLEST_TEXT * 1.25 + 1;
  const text: TextMark = {
    kind: 'text',
    role: 'note',
    at: point(0, height / 2),
    lines,
    size: SMALLEST_TEXT,
    align: 'start',
    angle: 0,
  };
  return { width: STEP_WIDTH, height, marks: [text] };
};

const BESIDE = 6;

/** Rows of pictures from top to bottom, each in the middle, those of a row side by side. */
const stacked = (rows: readonly (readonly Picture[])[]): Picture | null => {
  const filled = rows.filter((row) => row.length > 0);
  if (filled.length === 0) return null;
  const GAP = 2.5;
  const heights = filled.map((row) => Math.max(...row.map(({ height }) => height)));
  const height = heights.reduce((a, b) => a + b, 0) + GAP * (filled.length - 1);
  const marks: Mark[] = [];
  let top = height;
  for (const [i, row] of filled.entries()) {
    const wide = row.reduce((sum, { width }) => sum + width, BESIDE * (row.length - 1));
    let x = (STEP_WIDTH - wide) / 2;
    for (const picture of row) {
      const y = top - heights[i]! + (heights[i]! - picture.height) / 2;
      marks.push(...movedMarks(picture.marks, point(x, y)));
      x += picture.width + BESIDE;
    }
    top -= heights[i]! + GAP;
  }
  return { width: STEP_WIDTH, height, marks };
};
