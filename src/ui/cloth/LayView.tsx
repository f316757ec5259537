import { type KeyboardEvent, type PointerEvent, useId, useMemo, useRef, useState } from 'react';
import { type ClothLay, type LaidPiece, laidCut, laidName } from '../../cloth/cloth-lay.ts';
import { layOverlaps } from '../../cloth/lay-overlaps.ts';
import { grainMarks } from '../../drawing/marks/grain.ts';
import { pathData } from '../../drawing/path-data.ts';
import { boundsOf } from '../../geometry/bounds.ts';
import { boxHeight, boxWidth } from '../../geometry/box.ts';
import { point } from '../../geometry/point.ts';
import type { Placement } from '../../nesting/task.ts';
import { layStroke } from './lay-keys.ts';
import { freePiece, pinPiece } from './lay-now.ts';
import { useLay } from './use-lay.ts';
import './lay.css';

/** The cutting lay: the cloth as it lies, its pieces on it, to be moved by hand. */
export const LayView = () => {
  const { lay, pins, message } = useLay();
  const help = useId();
  return (
    <div className="lay">
      {message !== null && <p className="problem">{message}</p>}
      {lay === null ? (
        message === null && <p className="help">Laying out the cloth…</p>
      ) : (
        <>
          <Cloth lay={lay} pins={pins} describedBy={help} />
          <p className="help" id={help}>
            Drag a piece to put it down where you like: the others make room. Keys: arrows move it, R turns
            it, Enter puts it down or lets it go again.
          </p>
        </>
      )}
    </div>
  );
};

/** Round the cloth, mm. */
const ROOM = 30;
/** Shown of the bolt beyond the last piece, mm. */
const BEYOND = 60;

interface ClothProps {
  readonly lay: ClothLay;
  readonly pins: readonly Placement[];
  readonly describedBy: string;
}

const Cloth = ({ lay, pins, describedBy }: ClothProps) => {
  const svg = useRef<SVGSVGElement>(null);
  // What a hand holds, where it is just now: the lay itself changes when it is put down.
  const [held, setHeld] = useState<Placement | null>(null);
  const laid = lay.laid.map((one) => (one.at.piece === held?.piece ? { ...one, at: held } : one));
  const wrong = useMemo(() => layOverlaps({ ...lay, laid }), [lay, laid]);
  const length = lay.remnant ?? lay.length + BEYOND;
  const [width, height] = [length + 2 * ROOM, lay.width + 2 * ROOM];
  return (
    <svg
      ref={svg}
      viewBox={`${-ROOM} ${-lay.width - ROOM} ${width} ${height}`}
      role="application"
      aria-label={`Cutting lay, ${lay.laid.length} pieces`}
      aria-describedby={describedBy}
    >
      <rect className="cloth" x={0} y={-lay.width} width={length} height={lay.width} />
      <line className="selvedge" x1={0} x2={length} y1={-lay.width} y2={-lay.width} />
      <line className={lay.folded ? 'fold' : 'selvedge'} x1={0} x2={length} y1={0} y2={0} />
      {lay.remnant === null && (
        <line className="end" x1={lay.length} x2={lay.length} y1={-lay.width} y2={0} />
      )}
      {laid.map((one) => (
        <Piece
          key={one.piece.id}
          laid={one}
          pinned={pins.some(({ piece }) => piece === one.piece.id)}
          wrong={wrong.has(one.piece.id)}
          scale={() => scaleOf(svg.current, width)}
          onHold={setHeld}
        />
      ))}
    </svg>
  );
};

/** Millimetres of cloth to a pixel of the screen. */
const scaleOf = (svg: SVGSVGElement | null, width: number): number => {
  const matrix = svg?.getScreenCTM();
  return matrix ? 1 / matrix.a : width / 600;
};

interface PieceProps {
  readonly laid: LaidPiece;
  readonly pinned: boolean;
  readonly wrong: boolean;
  readonly scale: () => number;
  readonly onHold: (at: Placement | null) => void;
}

const Piece = ({ laid, pinned, wrong, scale, onHold }: PieceProps) => {
  const start = useRef<{ readonly x: number; readonly y: number; readonly at: Placement } | null>(null);
  const cut = laidCut(laid);
  const box = boundsOf(cut);
  const middle = laidName(laid);
  const { id, piece, mirrored, layers, rotations } = laid.piece;

  const moved = (event: PointerEvent, from: NonNullable<typeof start.current>): Placement => {
    const k = scale();
    return {
      ...from.at,
      x: from.at.x + (event.clientX - from.x) * k,
      y: from.at.y - (event.clientY - from.y) * k,
    };
  };
  const onPointerDown = (event: PointerEvent<SVGGElement>): void => {
    event.currentTarget.setPointerCapture(event.pointerId);
    start.current = { x: event.clientX, y: event.clientY, at: laid.at };
  };
  const onPointerMove = (event: PointerEvent): void => {
    if (start.current) onHold(moved(event, start.current));
  };
  const onPointerUp = (event: PointerEvent): void => {
    if (!start.current) return;
    const at = moved(event, start.current);
    const far = Math.hypot(at.x - start.current.at.x, at.y - start.current.at.y) > 1;
    start.current = null;
    onHold(null);
    if (far) pinPiece(at);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const stroke = layStroke(event, laid.at, rotations);
    if (stroke === null) return;
    event.preventDefault();
    event.stopPropagation();
    if (stroke === 'down') pinned ? freePiece(id) : pinPiece(laid.at);
    else pinPiece(stroke);
  };

  const facts = [
    mirrored && layers !== 'on the fold' ? 'face down' : '',
    layers === 'single' || layers === 'both' ? '' : layers,
    wrong ? 'lies over something' : '',
  ].filter((fact) => fact !== '');
  const size = nameSize(piece.name, boxWidth(box), boxHeight(box));
  return (
    // biome-ignore lint/a11y/useSemanticElements: no button of HTML stands inside a drawing.
    <g
      className={`laid${pinned ? ' pinned' : ''}${wrong ? ' wrong' : ''}`}
      tabIndex={0}
      role="button"
      aria-pressed={pinned}
      aria-label={[piece.name, ...facts].join(', ')}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={onPointerUp}
      onPointerCancel={() => {
        start.current = null;
        onHold(null);
      }}
      onKeyDown={onKeyDown}
    >
      <path d={pathData(cut)} />
      <Grain
        at={point(middle.x, middle.y - size)}
        length={Math.min(60, boxWidth(box) * 0.4)}
        turn={laid.at.rotation}
      />
      {boxHeight(box) > 16 && (
        <text x={middle.x} y={-middle.y} fontSize={size}>
          {piece.name}
        </text>
      )}
    </g>
  );
};

/** Of letters, mm on the cloth: small on small pieces. */
const SIZES = { least: 8, most: 20 };
const nameSize = (name: string, width: number, height: number): number =>
  Math.min(SIZES.most, Math.max(SIZES.least, Math.min(width / (name.length * 0.75), height * 0.42)));

/** The grainline, which lies along the cloth unless the piece is on the bias. */
const Grain = ({
  at,
  length,
  turn,
}: {
  readonly at: { readonly x: number; readonly y: number };
  readonly length: number;
  readonly turn: number;
}) => {
  const [dx, dy] = [(Math.cos(turn) * length) / 2, (Math.sin(turn) * length) / 2];
  const from = point(at.x - dx, at.y - dy);
  const to = point(at.x + dx, at.y + dy);
  return grainMarks([from, to]).map(({ path, filled }) => {
    const d = pathData(path);
    return <path key={d} d={d} className={filled ? 'grain head' : 'grain'} />;
  });
};
