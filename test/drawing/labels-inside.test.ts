import { describe, expect, test } from 'vitest';
import { defaultsOf, type Parameter, type ParameterValue, type Values } from '../../src/caps/parameter.ts';
import { fetchStyles } from '../../src/caps/registry.ts';
import { drawPattern } from '../../src/drawing/draw-piece.ts';
import type { PieceDrawing, TextMark } from '../../src/drawing/drawing.ts';
import { blockSize } from '../../src/drawing/text-block.ts';
import { areaOf } from '../../src/geometry/area.ts';
import { crossings } from '../../src/geometry/intersect.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { type Path, polygon } from '../../src/geometry/path.ts';
import { point, rotate } from '../../src/geometry/point.ts';
import { HEADS } from '../caps/family.ts';

const styles = await fetchStyles();

const extremesOf = (row: Parameter): readonly ParameterValue[] => {
  switch (row.kind) {
    case 'choice':
      return row.options.map(({ value }) => value);
    case 'switch':
      return [true, false];
    case 'row':
      return [];
    default:
      return [row.min, row.max];
  }
};

const wishesOf = ({ parameters }: (typeof styles)[number]): readonly Values[] => {
  const defaults = defaultsOf(parameters) as Values;
  const extremes = Object.entries(parameters).flatMap(([key, row]) =>
    row.group === 'seams' ? [] : extremesOf(row).map((value) => ({ ...defaults, [key]: value })),
  );
  return [defaults, ...extremes];
};

/** The frame of a block of text that starts at its point. */
const frameOf = (mark: TextMark): Path => {
  const { width, height } = blockSize(mark);
  const corner = (x: number, y: number) => rotate(point(mark.at.x + x, mark.at.y + y), mark.angle, mark.at);
  const [low, high] = [-height / 2, height / 2];
  return polygon([corner(0, low), corner(width, low), corner(width, high), corner(0, high)]);
};

const stitchOf = ({ marks }: PieceDrawing): Path =>
  marks.flatMap((mark) => (mark.kind === 'line' && mark.role === 'stitch' ? mark.path : []));

const labelOf = ({ marks }: PieceDrawing): readonly TextMark[] =>
  marks.filter((m): m is TextMark => m.kind === 'text' && (m.role === 'title' || m.role === 'label'));

/** In a strip narrower than this, mm, all that a piece says does not stand between the stitch lines in 8 point: a strap, the least under ring. */
const NARROW = 18;

describe('the label of a piece', () => {
  for (const style of styles) {
    test(`of a ${style.name.toLowerCase()} for a child of two stays within the stitch line, at the extremes too, whole and on the fold`, () => {
      const head = HEADS[0]!;
      for (const values of wishesOf(style).filter((wish) => style.problems(wish, head).length === 0)) {
        const { pattern, finishedGirth } = style.draft(values, head);
        const narrow = pattern.pieces.filter(({ outline }) => {
          const path = outline.flatMap((edge) => edge.path);
          return areaOf(path) / (pathLength(path) / 2) < NARROW;
        });
        for (const halves of [false, true]) {
          const label = { cap: 'Canal band cap', wearer: 'Euphonium', finishedGirth, date: '2026-11-25' };
          for (const drawing of drawPattern(pattern, { unit: 'cm', halves, dimensions: false, label })) {
            if (narrow.some(({ id }) => id === drawing.id)) continue;
            const stitch = stitchOf(drawing);
            const crossing = labelOf(drawing).filter((mark) => crossings(frameOf(mark), stitch).length > 0);
            expect(crossing, `${drawing.id}, ${JSON.stringify(values)}`).toEqual([]);
          }
        }
      }
    }, 120_000);
  }
});
