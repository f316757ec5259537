import { describe, expect, it } from 'vitest';
import { flatTopParameters } from '../../src/caps/flat-top/parameters.ts';
import { draggedTo, stepped } from '../../src/ui/controls/steps.ts';
import { inches } from '../../src/units.ts';
import { press } from './presses.ts';

const { ease, crownFullness, visorDrop, stiffenerClearance } = flatTopParameters;

describe('an arrow key on a slider', () => {
  it('moves by what a sewist would: 2 mm, or an eighth of an inch', () => {
    expect(stepped(press('ArrowRight'), 12, ease, 'cm')).toBeCloseTo(14, 9);
    expect(stepped(press('ArrowDown'), 12, ease, 'cm')).toBeCloseTo(10, 9);
    expect(stepped(press('ArrowUp'), inches(1 / 2), ease, 'in')).toBeCloseTo(inches(5 / 8), 9);
  });
  it('with shift moves by a fifth of that', () => {
    expect(stepped(press('ArrowLeft', { shiftKey: true }), 12, ease, 'cm')).toBeCloseTo(11.6, 9);
  });
  it('moves an angle by a degree in either unit', () => {
    const degree = Math.PI / 180;
    expect(stepped(press('ArrowRight'), 30 * degree, visorDrop, 'in')).toBeCloseTo(31 * degree, 9);
  });
  it('stops at the ends of the track', () => {
    expect(stepped(press('ArrowRight'), 39.5, ease, 'cm')).toBe(ease.max);
    expect(stepped(press('PageDown'), 3, ease, 'cm')).toBe(ease.min);
    expect(stepped(press('Home'), 12, ease, 'cm')).toBe(ease.min);
    expect(stepped(press('End'), 12, ease, 'cm')).toBe(ease.max);
  });
  it('brings a typed value from beyond the track back onto it', () => {
    expect(stepped(press('ArrowLeft'), 90, ease, 'cm')).toBe(ease.max);
  });
  it('leaves the browser its way back', () => {
    expect(stepped(press('ArrowLeft', { altKey: true }), 12, ease, 'cm')).toBeNull();
    expect(stepped(press('Home', { ctrlKey: true }), 12, ease, 'cm')).toBeNull();
  });
  it('is no other key', () => {
    expect(stepped(press('Tab'), 12, ease, 'cm')).toBeNull();
    expect(stepped(press('a'), 12, ease, 'cm')).toBeNull();
  });
});

describe('a dragged slider', () => {
  it('comes to rest on what a ruler shows', () => {
    expect(draggedTo(101.37, crownFullness, 'cm')).toBe(101);
    expect(draggedTo(101.37, crownFullness, 'in')).toBeCloseTo(inches(4), 9);
    expect(draggedTo(1.61, stiffenerClearance, 'cm')).toBeCloseTo(1.5, 9);
  });
  it('never leaves the track', () => {
    expect(draggedTo(ease.max + 0.4, ease, 'in')).toBe(ease.max);
    expect(draggedTo(-0.2, ease, 'cm')).toBeGreaterThanOrEqual(0);
  });
});
