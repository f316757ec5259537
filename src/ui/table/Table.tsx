import { type KeyboardEvent, useEffect, useId, useLayoutEffect, useRef, useState } from 'react';
import { atRest } from '../at-rest.ts';
import { same } from '../same.ts';
import { tellInShort } from '../use-in-short.ts';
import { Caption } from './Caption.tsx';
import { type Desk, openDesk, type Wanted } from './desk.ts';
import { strokeOf } from './keys.ts';
import { PieceList } from './PieceList.tsx';
import type { PieceWords } from './piece-words.ts';
import './table.css';

export interface TableProps {
  /** What is wanted on the table, and how to hear that it has changed: no element is gone through for a move of a slider. */
  readonly wanted: () => Wanted;
  readonly onWanted: (listener: () => void) => () => void;
  readonly chosen: string | null;
  readonly onChoose: (id: string | null) => void;
  readonly onLight: (id: string | null) => void;
  /** Told once: the pieces are painted, or cannot be. */
  readonly onReady: () => void;
}

/** The list of pieces, out of sight, follows a change once it has rested this long, ms. */
const REST = 250;

/**
 * The table where the pieces lie. The canvas is for eyes and hands; the list of buttons says and does the same for
 * keyboards and screen readers. `data-painted` counts pictures and `data-outline` marks the outlines last painted.
 */
export const Table = ({ wanted, onWanted, chosen, onChoose, onLight, onReady }: TableProps) => {
  const root = useRef<HTMLDivElement>(null);
  const surface = useRef<HTMLDivElement>(null);
  const ground = useRef<HTMLCanvasElement>(null);
  const pieces = useRef<HTMLCanvasElement>(null);
  const desk = useRef<Desk>(null);
  const [listed, setListed] = useState<readonly PieceWords[]>([]);
  const [caption, setCaption] = useState<PieceWords | null>(null);
  const [failed, setFailed] = useState(false);
  const told = useRef({ choose: onChoose, light: onLight, ready: onReady });
  const help = useId();

  useLayoutEffect(() => {
    told.current = { choose: onChoose, light: onLight, ready: onReady };
  }, [onChoose, onLight, onReady]);

  useEffect(() => {
    const elements = {
      root: root.current!,
      surface: surface.current!,
      ground: ground.current!,
      pieces: pieces.current!,
    };
    const list = atRest((now: readonly PieceWords[]) => setListed(now), REST);
    const opened = openDesk(elements, {
      choose: (id) => told.current.choose(id),
      light: (id) => told.current.light(id),
      pieces: (pieces, named) => {
        list.push(pieces);
        setCaption((before) => (same(before, named) ? before : named));
      },
      inShort: tellInShort,
      ready: () => told.current.ready(),
      failed: () => {
        setFailed(true);
        told.current.ready();
      },
    });
    desk.current = opened;
    const show = () => opened.show(wanted());
    show();
    const stop = onWanted(show);
    return () => {
      stop();
      opened.close();
      list.stop();
    };
  }, [wanted, onWanted]);

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
      {failed && (
        <p className="table-failed" role="alert">
          The pieces cannot be painted. Please reload the page, or bring this browser up to date.
        </p>
      )}
      <PieceList pieces={listed} chosen={chosen} onChoose={onChoose} onLight={onLight} />
      <div className="table-foot">
        <Caption words={caption} />
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
