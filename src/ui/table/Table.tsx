import { type KeyboardEvent, useEffect, useId, useLayoutEffect, useRef } from 'react';
import type { Placed } from '../../drawing/arrange.ts';
import type { Unit } from '../../units.ts';
import { useRested } from '../use-rested.ts';
import { Caption } from './Caption.tsx';
import { type Desk, openDesk, type Told } from './desk.ts';
import { strokeOf } from './keys.ts';
import { PieceList } from './PieceList.tsx';
import type { Lying } from './shapes.ts';
import './table.css';

export interface TableProps {
  /** What kind of cap it is: the pieces of another are framed anew. */
  readonly subject: string;
  readonly drawings: readonly Placed[];
  /** What lay there before the change that is being made: shown as faint outlines. */
  readonly ghost?: readonly Placed[] | null;
  readonly unit: Unit;
  readonly chosen: string | null;
  readonly lit: string | null;
  /** Both sides of a seam that is pointed at. */
  readonly seam?: readonly Lying[];
  readonly onChoose: (id: string | null) => void;
  readonly onLight: (id: string | null) => void;
}

/** The list of pieces, out of sight, follows a change once it has rested this long, ms. */
const REST = 250;

const NOTHING: readonly Placed[] = [];
const NO_SEAM: readonly Lying[] = [];

/**
 * The table where the pieces lie. The canvas is for eyes and hands; the list of buttons says and does the same for
 * keyboards and screen readers. `data-painted` counts frames and `data-outline` marks the outlines last painted.
 */
export const Table = ({
  subject,
  drawings,
  ghost,
  unit,
  chosen,
  lit,
  seam = NO_SEAM,
  onChoose,
  onLight,
}: TableProps) => {
  const root = useRef<HTMLDivElement>(null);
  const surface = useRef<HTMLDivElement>(null);
  const ground = useRef<HTMLCanvasElement>(null);
  const pieces = useRef<HTMLCanvasElement>(null);
  const desk = useRef<Desk>(null);
  const told = useRef<Told>({ choose: onChoose, light: onLight });
  const help = useId();
  const listed = useRested(drawings, REST);

  useLayoutEffect(() => {
    told.current = { choose: onChoose, light: onLight };
  }, [onChoose, onLight]);

  useEffect(() => {
    const elements = {
      root: root.current!,
      surface: surface.current!,
      ground: ground.current!,
      pieces: pieces.current!,
    };
    const opened = openDesk(elements, () => told.current);
    desk.current = opened;
    return () => opened.close();
  }, []);

  useEffect(() => {
    desk.current?.show({ subject, placed: drawings, ghost: ghost ?? NOTHING, unit, chosen, lit, seam });
  }, [subject, drawings, ghost, unit, chosen, lit, seam]);

  const onKeyDown = (event: KeyboardEvent): void => {
    const stroke = strokeOf(event);
    if (!stroke) return;
    event.preventDefault();
    desk.current?.stroke(stroke);
  };

  return (
    <section className="table" aria-label="The table" ref={root} onKeyDown={onKeyDown}>
      <div
        className="table-surface"
        ref={surface}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: arrow and zoom keys need a place to be pressed in.
        tabIndex={0}
        role="application"
        aria-label="Pattern pieces"
        aria-describedby={help}
      >
        <canvas ref={ground} />
        <canvas ref={pieces} />
      </div>
      <p id={help} className="table-help">
        Arrows move the table, + and − zoom, 0 shows all pieces. Tab goes from piece to piece.
      </p>
      <PieceList drawings={listed} unit={unit} chosen={chosen} onChoose={onChoose} onLight={onLight} />
      <div className="table-foot">
        <Caption drawings={drawings} unit={unit} shown={lit ?? chosen} />
        <div className="table-view">
          <button
            type="button"
            onClick={() => desk.current?.stroke({ kind: 'zoom', factor: 1 / 1.25 })}
            aria-label="Zoom out"
          >
            −
          </button>
          <button
            type="button"
            onClick={() => desk.current?.stroke({ kind: 'fit' })}
            aria-label="Fit all pieces"
          >
            Fit
          </button>
          <button
            type="button"
            onClick={() => desk.current?.stroke({ kind: 'zoom', factor: 1.25 })}
            aria-label="Zoom in"
          >
            +
          </button>
        </div>
      </div>
    </section>
  );
};
