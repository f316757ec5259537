import { describe, expect, test } from 'vitest';
import { layStroke } from '../../../src/ui/cloth/lay-keys.ts';
import { press } from '../presses.ts';

const at = { piece: 'tip', container: 0, rotation: 0, x: 100, y: 50 };
const turns = [0, Math.PI];

describe('a key on a piece of the lay', () => {
  test('moves it, turns it or puts it down', () => {
    expect(layStroke(press('ArrowRight'), at, turns)).toEqual({ ...at, x: 105 });
    expect(layStroke(press('ArrowDown', { shiftKey: true }), at, turns)).toEqual({ ...at, y: 49 });
    expect(layStroke(press('r'), at, turns)).toEqual({ ...at, rotation: Math.PI });
    expect(layStroke(press('Enter'), at, turns)).toBe('down');
  });

  test('leaves the browser its own: Ctrl R loads the page again', () => {
    expect(layStroke(press('r', { ctrlKey: true }), at, turns)).toBeNull();
    expect(layStroke(press('R', { metaKey: true, shiftKey: true }), at, turns)).toBeNull();
    expect(layStroke(press('ArrowLeft', { altKey: true }), at, turns)).toBeNull();
  });
});
