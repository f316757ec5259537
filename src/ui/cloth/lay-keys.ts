import { turnAmong } from '../../cloth/rotations-on.ts';
import type { Placement } from '../../nesting/task.ts';
import { type Press, withCommandKey } from '../with-command-key.ts';

/** A press of an arrow moves a piece by this much, mm; with shift by a fifth of it. */
const STEP = 5;
const FINE = 1 / 5;

const ways: Readonly<Record<string, readonly [number, number]>> = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** Where a key takes a piece, or 'down' where it is to be put down as it lies (or let go); null for a key that does nothing. */
export const layStroke = (
  press: Press,
  at: Placement,
  rotations: readonly number[],
): Placement | 'down' | null => {
  if (withCommandKey(press)) return null;
  const { key, shiftKey } = press;
  if (key === 'Enter' || key === ' ') return 'down';
  if (key.toLowerCase() === 'r') {
    const next = (turnAmong(rotations, at.rotation) + 1) % rotations.length;
    return { ...at, rotation: rotations[next] ?? at.rotation };
  }
  const way = ways[key];
  if (way === undefined) return null;
  const step = STEP * (shiftKey ? FINE : 1);
  return { ...at, x: at.x + way[0] * step, y: at.y + way[1] * step };
};
