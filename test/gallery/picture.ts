import { defaultsOf, type Values } from '../../src/caps/parameter.ts';
import type { Head, Style } from '../../src/caps/style.ts';
import type { Cloths } from '../../src/cloth/cloth.ts';
import { arrange } from '../../src/drawing/arrange.ts';
import { drawPattern } from '../../src/drawing/draw-piece.ts';
import type { DrawingOptions } from '../../src/drawing/drawing-options.ts';
import { rowsOf, withRows } from '../../src/guide/rows.ts';
import { inches } from '../../src/units.ts';
import { headIn } from '../caps/cloths.ts';
import { toSvg } from './svg.ts';

interface Wish<V> {
  readonly name: string;
  readonly values?: Partial<V>;
  readonly girth?: number;
  /** Cloth of no thickness where left out. */
  readonly cloths?: Cloths;
  readonly options?: Partial<DrawingOptions>;
  /** With the rows of stitches that these cloths get. */
  readonly rowsFor?: Cloths;
}

/** One drawing of the gallery: the pieces of a style with some values. */
export interface Picture extends Wish<Values> {
  readonly style: Style;
}

/** Pictures of one style. */
export const of = <V>(style: Style<V>, wishes: readonly Wish<V>[]): readonly Picture[] =>
  wishes.map((wish) => ({ ...wish, style: style as Style }) as Picture);

export const svgOf = ({
  name,
  style,
  values,
  girth = inches(21.5),
  cloths,
  options,
  rowsFor,
}: Picture): string => {
  const bare: Head = { girth, ratio: 0.8, arc: 0.5625 * girth };
  const wished = { ...defaultsOf(style.parameters), ...values } as Values;
  const head = cloths ? headIn(cloths, bare, style, wished) : bare;
  const problems = style.problems(wished, head);
  if (problems.length > 0) throw new Error(`not a cap that can be sewn: ${JSON.stringify(problems)}`);
  const draft = style.draft(wished, head);
  const label = {
    cap: 'Canal band cap',
    wearer: 'Cornet',
    finishedGirth: draft.finishedGirth,
    date: '2026-11-25',
  };
  const { pattern } = draft;
  const sewn = rowsFor ? { pattern, values: wished, cloths: rowsFor } : null;
  const pieces = sewn ? withRows(pattern.pieces, rowsOf(sewn)) : pattern.pieces;
  return toSvg(
    arrange(
      drawPattern(
        { ...pattern, pieces },
        { unit: 'cm', halves: false, dimensions: false, label, ...options },
      ),
    ),
    name.replaceAll('-', ' '),
  );
};
