import { useCallback, useId, useMemo, useRef, useState } from 'react';
import { type ClothLay, type LaidPiece, laidPolygon } from '../../cloth/cloth-lay.ts';
import { layOverlaps } from '../../cloth/lay-overlaps.ts';
import { boxCentre, boxOf } from '../../geometry/box.ts';
import { contains } from '../../geometry/inside.ts';
import { polygon } from '../../geometry/path.ts';
import { add } from '../../geometry/point.ts';
import type { Placement } from '../../nesting/task.ts';
import { useLayChoice } from '../../state/use-lay-choice.ts';
import { Ground } from './Ground.tsx';
import { PieceOnCloth } from './PieceOnCloth.tsx';
import { useLay } from './use-lay.ts';
import './lay.css';

/** The cutting lay: the cloth as it lies, its pieces on it, to be moved by hand. */
export const LayView = () => {
  const { pins } = useLayChoice();
  const { lay, message } = useLay();
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
  const laid =
    held === null
      ? lay.laid
      : lay.laid.map((one) => (one.at.piece === held.piece ? { ...one, at: held } : one));
  // What the search has laid lies free.
  const byHand = useMemo(
    () => new Set([...pins, ...(held === null ? [] : [held])].map(({ piece }) => piece)),
    [pins, held],
  );
  const wrong = useMemo(() => layOverlaps({ ...lay, laid }, byHand), [lay, laid, byHand]);
  const length = lay.remnant ?? lay.length + (lay.scraps.length > 0 ? 0 : BEYOND);
  const [width, height] = [length + 2 * ROOM, lay.width + 2 * ROOM];
  const scale = useCallback(() => scaleOf(svg.current, width), [width]);
  const onScrap = useCallback((one: LaidPiece, at: Placement) => onScrapOf(lay, one, at), [lay]);
  return (
    <svg
      ref={svg}
      viewBox={`${-ROOM} ${-lay.width - ROOM} ${width} ${height}`}
      role="application"
      aria-label={`Cutting lay, ${lay.laid.length} pieces`}
      aria-describedby={describedBy}
    >
      <Ground lay={lay} length={length} />
      {laid.map((one) => (
        <PieceOnCloth
          key={one.piece.id}
          laid={one}
          pinned={pins.some(({ piece }) => piece === one.piece.id)}
          wrong={wrong.has(one.piece.id)}
          scale={scale}
          onScrap={onScrap}
          onHold={setHeld}
        />
      ))}
    </svg>
  );
};

/** A piece let go over another scrap is that scrap's. */
const onScrapOf = ({ scraps }: ClothLay, laid: LaidPiece, at: Placement): Placement => {
  const middle = boxCentre(boxOf(laidPolygon({ ...laid, at })));
  const to = scraps.findIndex(({ scrap, shift }) =>
    contains(polygon(scrap.outline.map((p) => add(p, shift))), middle),
  );
  const shift = scraps[to]?.shift;
  if (shift === undefined || to === at.container) return at;
  return { ...at, container: to, x: at.x + laid.shift.x - shift.x, y: at.y + laid.shift.y - shift.y };
};

/** Millimetres of cloth to a pixel of the screen. */
const scaleOf = (svg: SVGSVGElement | null, width: number): number => {
  const matrix = svg?.getScreenCTM();
  return matrix ? 1 / matrix.a : width / 600;
};
