import { describe, expect, it } from 'vitest';
import { decodeTyped, stillStands, type Typed } from '../../src/state/typed.ts';

const girth: Typed = { text: '21 1/2', value: 546.1, unit: 'in', understood: true };
const blot: Typed = { text: '21 1/', value: 546.1, unit: 'in', understood: false };

describe('a text as typed', () => {
  it('stands while the field holds what it said', () => {
    expect(stillStands(girth, 546.1, 'in')).toBe(true);
  });
  it('gives way when the value is changed in another way', () => {
    expect(stillStands(girth, 560, 'in')).toBe(false);
    expect(stillStands(blot, 560, 'in')).toBe(false);
  });
  it('gives way to the other unit once it was understood', () => {
    expect(stillStands(girth, 546.1, 'cm')).toBe(false);
  });
  it('waits through a switch of units while it could not be read', () => {
    expect(stillStands(blot, 546.1, 'cm')).toBe(true);
  });
  it('is compared figure by figure in a row of widths', () => {
    const row: Typed = { text: '60 58 50', value: [60, 58, 50], unit: 'cm', understood: true };
    expect(stillStands(row, [60, 58, 50], 'cm')).toBe(true);
    expect(stillStands(row, [60, 58, 51], 'cm')).toBe(false);
    expect(stillStands(row, [60, 58], 'cm')).toBe(false);
  });
});

describe('kept texts', () => {
  it('come back word for word', () => {
    expect(decodeTyped(JSON.parse(JSON.stringify({ 'head.girth': girth, 'cap.ease': blot })))).toEqual({
      'head.girth': girth,
      'cap.ease': blot,
    });
  });
  it.each([
    [{ ...girth, text: 5 }],
    [{ ...girth, unit: 'ell' }],
    [{ ...girth, value: {} }],
    [{ ...girth, understood: 'yes' }],
    [{ ...girth, text: 'x'.repeat(500) }],
    [null],
    ['21'],
  ])('are left out where they are damaged: %j', (entry) => {
    expect(decodeTyped({ 'head.girth': entry, 'cap.ease': blot })).toEqual({ 'cap.ease': blot });
  });
  it.each([[undefined], [null], [7], ['text']])('may be missing altogether: %j', (data) => {
    expect(decodeTyped(data)).toEqual({});
  });
});
