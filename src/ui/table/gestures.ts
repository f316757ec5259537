import { distance, type Point, point } from '../../geometry/point.ts';

/** What a hand can do to the table. Pixels from the table's upper left corner. */
export interface Gestures {
  readonly pull: (right: number, down: number) => void;
  readonly zoom: (factor: number, at: Point) => void;
  readonly tap: (at: Point) => void;
  /** Null when the pointer has left. */
  readonly hover: (at: Point | null) => void;
}

/** A pointer that moves less than this, in pixels, is held still. */
const STILL = 5;
/** A wheel's turn in pixels, and a pinch on a touchpad, as the power of e that it zooms by. */
const WHEEL = 0.0016;
const PINCH = 0.01;
const LINE = 16;

/** Listens to mouse, pen, fingers and wheel. Returns how to stop. */
export const listen = (element: HTMLElement, gestures: Gestures): (() => void) => {
  const stop = new AbortController();
  const { signal } = stop;
  const down = new Map<number, Point>();
  let pressedAt: Point | null = null;
  const spot = (event: PointerEvent | WheelEvent): Point => {
    const box = element.getBoundingClientRect();
    return point(event.clientX - box.left, event.clientY - box.top);
  };
  const press = (event: PointerEvent): void => {
    if (event.button !== 0) return;
    element.setPointerCapture(event.pointerId);
    down.set(event.pointerId, spot(event));
    // A second finger makes it a pinch: no tap comes of it.
    pressedAt = down.size === 1 ? spot(event) : null;
  };
  const move = (event: PointerEvent): void => {
    const now = spot(event);
    const before = down.get(event.pointerId);
    if (!before) {
      if (event.pointerType !== 'touch') gestures.hover(now);
      return;
    }
    if (pressedAt && distance(now, pressedAt) < STILL) return;
    pressedAt = null;
    const other = [...down].find(([id]) => id !== event.pointerId)?.[1];
    if (other) pinch(other, before, now, gestures);
    else gestures.pull(now.x - before.x, now.y - before.y);
    down.set(event.pointerId, now);
  };
  const lift = (event: PointerEvent): void => {
    down.delete(event.pointerId);
    if (pressedAt && event.type === 'pointerup') gestures.tap(pressedAt);
    pressedAt = null;
  };
  const wheel = (event: WheelEvent): void => {
    event.preventDefault();
    const turn = event.deltaY * (event.deltaMode === WheelEvent.DOM_DELTA_PIXEL ? 1 : LINE);
    gestures.zoom(Math.exp(-turn * (event.ctrlKey ? PINCH : WHEEL)), spot(event));
  };
  element.addEventListener('pointerdown', press, { signal });
  element.addEventListener('pointermove', move, { signal });
  element.addEventListener('pointerup', lift, { signal });
  element.addEventListener('pointercancel', lift, { signal });
  element.addEventListener('pointerleave', () => gestures.hover(null), { signal });
  element.addEventListener('wheel', wheel, { signal, passive: false });
  return () => stop.abort();
};

/** One finger moved while the other rests: the spot between them follows, the space between them zooms. */
const pinch = (rest: Point, before: Point, now: Point, { pull, zoom }: Gestures): void => {
  pull((now.x - before.x) / 2, (now.y - before.y) / 2);
  const middle = point((rest.x + now.x) / 2, (rest.y + now.y) / 2);
  zoom(distance(rest, now) / Math.max(distance(rest, before), 1), middle);
};
