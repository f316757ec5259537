import { type KeyboardEvent, memo, type PointerEvent, useMemo, useRef } from 'react';
import type { LaidPiece } from '../../cloth/cloth-lay.ts';
import { layName } from '../../cloth/lay-name.ts';
import { keptOnFold } from '../../cloth/on-fold.ts';
import { laidLabel } from '../../drawing/laid-label.ts';
import { grainMarks } from '../../drawing/marks/grain.ts';
import { pathData } from '../../drawing/path-data.ts';
import { placedLines } from '../../drawing/text-block.ts';
import { add, type Point } from '../../geometry/point.ts';
import type { Placement } from '../../nesting/task.ts';
import { freePiece, pinPiece } from '../../state/cloth-actions.ts';
import { layStroke } from './lay-keys.ts';

interface Props {
  readonly laid: LaidPiece;
  readonly pinned: boolean;
  readonly wrong: boolean;
  readonly scale: () => number;
  /** The same place as one of the scrap that it lies on. */
  readonly onScrap: (laid: LaidPiece, at: Placement) => Placement;
  readonly onHold: (at: Placement | null) => void;
}

/** Where a pointer took the piece, in pixels of the screen, and where it lay then. */
interface Start {
  readonly pointer: number;
  readonly x: number;
  readonly y: number;
  readonly at: Placement;
}

/** A piece on the cloth: dragged, or moved by keys, it is put down and stays. Drawn anew only when something of it changes. */
export const PieceOnCloth = memo(({ laid, pinned, wrong, scale, onScrap, onHold }: Props) => {
  const start = useRef<Start | null>(null);
  const { cut } = laid.piece;
  const outline = useMemo(() => pathData(cut), [cut]);
  const { lines, size, at, grain } = useMemo(() => laidLabel(laid, SIZES), [laid]);
  const { id, mirrored, layers, rotations } = laid.piece;

  const moved = (event: PointerEvent, from: Start): Placement => {
    const k = scale();
    const [x, y] = [from.at.x + (event.clientX - from.x) * k, from.at.y - (event.clientY - from.y) * k];
    return keptOnFold(laid.piece, { ...from.at, x, y });
  };
  const onPointerDown = (event: PointerEvent<SVGGElement>): void => {
    // The other buttons are the browser's, and a second finger takes nothing from the first.
    if (event.button !== 0 || !event.isPrimary) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    start.current = { pointer: event.pointerId, x: event.clientX, y: event.clientY, at: laid.at };
  };
  const onPointerMove = (event: PointerEvent): void => {
    if (start.current?.pointer === event.pointerId) onHold(moved(event, start.current));
  };
  const onPointerUp = (event: PointerEvent): void => {
    if (start.current?.pointer !== event.pointerId) return;
    const at = moved(event, start.current);
    const far = Math.hypot(at.x - start.current.at.x, at.y - start.current.at.y) > 1;
    start.current = null;
    onHold(null);
    if (far) pinPiece(onScrap(laid, at));
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const stroke = layStroke(event, laid.at, rotations);
    if (stroke === null) return;
    event.preventDefault();
    event.stopPropagation();
    if (stroke === 'down') pinned ? freePiece(id) : pinPiece(laid.at);
    else pinPiece(keptOnFold(laid.piece, stroke));
  };

  const facts = [
    mirrored && layers !== 'on the fold' ? 'face down' : '',
    layers === 'single' || layers === 'both' ? '' : layers,
    wrong ? 'lies over something' : '',
  ].filter((fact) => fact !== '');
  return (
    // biome-ignore lint/a11y/useSemanticElements: no button of HTML stands inside a drawing.
    <g
      className={`laid${pinned ? ' pinned' : ''}${wrong ? ' wrong' : ''}`}
      tabIndex={0}
      role="button"
      aria-pressed={pinned}
      aria-label={[layName(laid.piece), ...facts].join(', ')}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={onPointerUp}
      onPointerCancel={({ pointerId }) => {
        if (start.current?.pointer !== pointerId) return;
        start.current = null;
        onHold(null);
      }}
      onKeyDown={onKeyDown}
    >
      <path d={outline} transform={whereabouts(add(laid.at, laid.shift), laid.at.rotation)} />
      {grain &&
        grainMarks(grain).map(({ path, filled }) => {
          const d = pathData(path);
          return <path key={d} d={d} className={filled ? 'grain head' : 'grain'} />;
        })}
      <text fontSize={size}>
        {placedLines({ kind: 'text', role: 'note', lines, size, at, align: 'middle', angle: 0 }).map(
          ({ text, at: { x, y } }) => (
            <tspan key={text} x={x} y={-y}>
              {text}
            </tspan>
          ),
        )}
      </text>
    </g>
  );
});

/** From a frame of its own to a place on the cloth, y down, at a turn in radians counter-clockwise. */
const whereabouts = ({ x, y }: Point, turn: number): string =>
  `translate(${x} ${-y}) rotate(${(-turn * 180) / Math.PI})`;

/** Of letters, mm on the cloth: small on small pieces. */
const SIZES = { least: 8, most: 20 };
