import { flatTop } from '../../src/caps/flat-top/flat-top.ts';
import { type FlatTopValues, flatTopParameters } from '../../src/caps/flat-top/parameters.ts';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { arrange } from '../../src/drawing/arrange.ts';
import { drawPattern } from '../../src/drawing/draw-piece.ts';
import type { DrawingOptions } from '../../src/drawing/drawing-options.ts';
import { inches } from '../../src/units.ts';
import { toSvg } from './svg.ts';

interface Picture {
  readonly name: string;
  readonly values?: Partial<FlatTopValues>;
  readonly girth?: number;
  readonly options?: Partial<DrawingOptions>;
}

/** Every style as it comes, at its extremes, and in each way of drawing it. */
export const pictures: readonly Picture[] = [
  { name: 'flat-top' },
  { name: 'flat-top-halves-on-the-fold', options: { halves: true } },
  { name: 'flat-top-inches-with-dimensions', options: { unit: 'in', dimensions: true, label: null } },
  { name: 'flat-top-oval-in-quarters', values: { tipRatio: 0.78 } },
  { name: 'flat-top-oval-in-halves', values: { tipRatio: 0.78, sideBandPieces: '2' } },
  {
    name: 'flat-top-neat-and-small',
    girth: 480,
    values: {
      ease: 0,
      crownFullness: 0,
      sideBandHeight: 30,
      bandHeight: 20,
      visorLength: 120,
      visorDepth: 30,
      visorDrop: 0,
      visorFullness: 0,
      strapWidth: 8,
      allowance: 3,
    },
  },
  {
    name: 'flat-top-full-and-large',
    girth: 640,
    values: {
      ease: 40,
      crownFullness: 300,
      sideBandHeight: 110,
      bandHeight: 70,
      visorLength: 300,
      visorDepth: 90,
      visorDrop: 1,
      visorFullness: 1,
      strapWidth: 30,
      allowance: 20,
    },
  },
  { name: 'flat-top-for-a-bought-insert', values: { visorSource: 'insert' } },
  { name: 'flat-top-plain', values: { strap: false, lining: false } },
];

export const svgOf = ({ name, values, girth = inches(21.5), options }: Picture): string => {
  const head = { girth, ratio: 0.8, arc: 307 };
  const wished = { ...defaultsOf(flatTopParameters), ...values };
  const problems = flatTop.problems(wished, head);
  if (problems.length > 0) throw new Error(`not a cap that can be sewn: ${JSON.stringify(problems)}`);
  const draft = flatTop.draft(wished, head);
  const label = {
    cap: 'Canal band cap',
    wearer: 'Cornet',
    finishedGirth: draft.finishedGirth,
    date: '2026-11-25',
  };
  return toSvg(
    arrange(drawPattern(draft.pattern, { unit: 'cm', halves: false, dimensions: false, label, ...options })),
    name.replaceAll('-', ' '),
  );
};
