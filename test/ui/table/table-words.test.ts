import { describe, expect, it } from 'vitest';
import { arrange } from '../../../src/drawing/arrange.ts';
import { drawPattern } from '../../../src/drawing/draw-piece.ts';
import { strokeOf } from '../../../src/ui/table/keys.ts';
import { outlineHash } from '../../../src/ui/table/outline-hash.ts';
import { named, pieceWords } from '../../../src/ui/table/piece-words.ts';
import { penScale, screenSize } from '../../../src/ui/table/screen-size.ts';
import { inches } from '../../../src/units.ts';
import { cap } from '../../drawing/caps.ts';
import { press } from '../presses.ts';

const drawn = (wishes = {}, halves = false) =>
  drawPattern(cap(wishes), { unit: 'cm', halves, dimensions: false, label: null });

describe('a piece in words', () => {
  it('is its name, its size as cut and how many to cut', () => {
    // A band for 22 in, 1 1/2 in high, with 1/4 in round it: 22 1/2 by 2 in.
    const band = drawn({ bandHeight: inches(1.5) }).find((d) => d.id === 'band')!;
    expect(pieceWords(band, 'in')).toEqual({
      id: 'band',
      name: 'Band',
      size: '22 1/2 × 2 in',
      cuts: 'Outer: cut 1, Interlining: cut 1',
    });
    expect(pieceWords(band, 'cm').size).toBe('57.2 × 5.1 cm');
  });

  it('says that a half lies on the fold', () => {
    const band = drawn({}, true).find((d) => d.id === 'band')!;
    expect(pieceWords(band, 'in').size).toBe('11 1/4 × 2 in on the fold');
  });
});

describe('the piece that a picture names', () => {
  it('is the one that is lit, or else the one that is chosen', () => {
    const pieces = drawn().map((drawing) => pieceWords(drawing, 'cm'));
    expect(named(pieces, { lit: null, chosen: null })).toBeNull();
    expect(named(pieces, { lit: null, chosen: 'visor' })?.name).toBe('Visor');
    expect(named(pieces, { lit: 'tip', chosen: 'visor' })?.name).toBe('Tip');
  });
});

describe('the mark of the outlines', () => {
  it('is the same for the same pieces and another once a piece has changed shape', () => {
    const mark = (wishes = {}) => outlineHash(arrange(drawn(wishes)));
    expect(mark()).toBe(mark());
    expect(mark({ crownFullness: 105 })).not.toBe(mark({ crownFullness: 106 }));
    expect(mark({ visorDepth: 55 })).not.toBe(mark({ visorDepth: 55.1 }));
  });

  it('does not tell a change that leaves every outline where it was', () => {
    expect(outlineHash(arrange(drawn({ buttonThickness: 3 })))).toBe(outlineHash(arrange(drawn())));
  });
});

describe('texts on the screen', () => {
  it('are true to paper close up, and names and figures are enlarged from afar', () => {
    expect(screenSize({ role: 'title', size: 5 }, 10)).toBe(50);
    expect(screenSize({ role: 'title', size: 5 }, 0.5)).toBeGreaterThanOrEqual(13);
    expect(screenSize({ role: 'dimension', size: 3 }, 0.5)).toBeGreaterThanOrEqual(12);
  });

  it('are left out where they would be too small to read', () => {
    expect(screenSize({ role: 'label', size: 3.5 }, 1)).toBeNull();
    expect(screenSize({ role: 'label', size: 3.5 }, 4)).toBe(14);
  });

  it('go with lines that never fade', () => {
    for (let scale = 0.05; scale < 20; scale *= 1.3) {
      // A cut line of 0.6 mm is a good pixel wide from afar, and never wider than on paper close up.
      expect(penScale(scale) * 0.6).toBeGreaterThan(0.8);
      expect(penScale(scale)).toBeLessThanOrEqual(Math.max(scale, 2.5));
    }
    expect(penScale(8)).toBe(8);
  });
});

describe('keys on the table', () => {
  const key = (name: string, more = {}) => strokeOf(press(name, more));

  it('zoom, fit, move and let go', () => {
    expect(key('+')).toEqual(key('='));
    expect(key('-')).toMatchObject({ kind: 'zoom' });
    expect(key('0')).toEqual({ kind: 'fit' });
    expect(key('Escape')).toEqual({ kind: 'let go' });
    // To look to the right the table slides to the left.
    expect(key('ArrowRight')).toMatchObject({ kind: 'pull', right: expect.any(Number), down: 0 });
    const right = key('ArrowRight');
    expect(right?.kind === 'pull' && right.right).toBeLessThan(0);
  });

  it('leave the browser its own', () => {
    expect(key('+', { ctrlKey: true })).toBeNull();
    expect(key('0', { metaKey: true })).toBeNull();
    expect(key('Tab')).toBeNull();
    expect(key('a')).toBeNull();
  });
});
