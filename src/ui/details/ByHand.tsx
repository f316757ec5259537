import { useId } from 'react';
import { allowanceOf } from '../../pattern/cut-line.ts';
import { type Ordinates, ordinatesOf } from '../../pattern/ordinates.ts';
import type { Allowances } from '../../pattern/pattern.ts';
import type { Piece } from '../../pattern/piece.ts';
import { useStudio } from '../../state/studio.ts';
import { formatLength, inches, type Unit } from '../../units.ts';
import { mm, type Words, words } from '../../words.ts';
import { Figures, Said } from '../Said.tsx';

interface Props {
  readonly piece: Piece;
  readonly allowances: Allowances;
}

/** How the piece is drawn without a printer, with ruler and square: a box, ordinates in it, corners and notches. */
export const ByHand = ({ piece, allowances }: Props) => {
  const unit = useStudio((s) => s.wish.unit);
  const drawn = ordinatesOf(piece, (length) => stepFor(length, unit));
  return (
    <details className="by-hand">
      <summary>Draw it by hand</summary>
      <p>
        <Said words={boxWords(drawn)} />
      </p>
      {drawn.ordinates.length > 0 && <Edges drawn={drawn} unit={unit} />}
      <Points drawn={drawn} unit={unit} />
      <p className="help">
        <Said words={allowanceWords(piece, allowances)} />
      </p>
    </details>
  );
};

/** Marks that a ruler has. */
const STEPS: Readonly<Record<Unit, readonly number[]>> = {
  cm: [5, 10, 20, 50, 100],
  in: [1 / 4, 1 / 2, 1, 2, 4].map(inches),
};

/** A curve is drawn well through so many points, or a few fewer. */
const MOST_STEPS = 14;

const stepFor = (length: number, unit: Unit): number =>
  STEPS[unit].find((step) => length / step <= MOST_STEPS) ?? STEPS[unit].at(-1)!;

const boxWords = ({ half, width, height, ordinates }: Ordinates): Words =>
  words`Draw a box, ${mm(width)} broad and ${mm(
    height,
  )} high${half ? ', its left side on the fold' : ''}: the stitch line fits into it. ${
    ordinates.length > 0
      ? 'Mark these points, measured from its lower left corner, and join them by a smooth curve from corner to corner.'
      : 'Mark these points, measured from its lower left corner, and join them in turn.'
  }`;

const allowanceWords = ({ outline }: Piece, allowances: Allowances): Words => {
  const widths = [...new Set(outline.map(({ kind }) => allowanceOf(kind, allowances)))];
  const [width] = widths;
  if (widths.length > 1 || width === undefined)
    return words`Outside the stitch line goes the seam allowance, for each seam as it is chosen under Cap.`;
  return width === 0
    ? words`It has no allowance: cut it on this line.`
    : words`Outside the stitch line goes the seam allowance, ${mm(width)}.`;
};

interface TableProps {
  readonly drawn: Ordinates;
  readonly unit: Unit;
}

const Edges = ({ drawn: { along, ordinates }, unit }: TableProps) => {
  const caption = useId();
  const length = (n: number) => formatLength(n, unit, { bare: true });
  return (
    <table aria-labelledby={caption}>
      <caption id={caption}>Edges, {unit}</caption>
      <thead>
        <tr>
          <th scope="col">{along === 'foot' ? 'To the right' : 'Up'}</th>
          <th scope="col">{along === 'foot' ? 'Up' : 'To the right'}</th>
        </tr>
      </thead>
      <tbody>
        {ordinates.map(({ at, spans }) => (
          <tr key={at}>
            <th scope="row">
              <Figures text={length(at)} />
            </th>
            <td>
              <Figures text={spans.map((span) => [...new Set(span.map(length))].join(' to ')).join(', ')} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
};

const Points = ({ drawn: { points }, unit }: TableProps) => {
  const caption = useId();
  const length = (n: number) => formatLength(n, unit, { bare: true });
  if (points.length === 0) return null;
  return (
    <table aria-labelledby={caption}>
      <caption id={caption}>Corners and marks, {unit}</caption>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">To the right</th>
          <th scope="col">Up</th>
        </tr>
      </thead>
      <tbody>
        {points.map(({ name, right, up }) => (
          <tr key={`${name} ${right} ${up}`}>
            <th scope="row">{name}</th>
            <td>
              <Figures text={length(right)} />
            </td>
            <td>
              <Figures text={length(up)} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
};
