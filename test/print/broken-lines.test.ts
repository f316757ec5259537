import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { textWidth } from '../../src/drawing/text-width.ts';
import { brokenLines } from '../../src/print/broken-lines.ts';

describe('words broken into lines', () => {
  const words = fc
    .array(fc.constantFrom('cap', 'for', 'Sunday', '帽'.repeat(40), 'w'.repeat(60)), { maxLength: 8 })
    .map((list) => list.join(' '));

  it('run no wider than the line, whatever the words, and lose no letter', () => {
    fc.assert(
      fc.property(words, fc.double({ min: 4, max: 30, noNaN: true }), (text, width) => {
        const lines = brokenLines(text, width);
        for (const line of lines) expect(textWidth(line)).toBeLessThanOrEqual(width);
        expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
      }),
    );
  });

  it('stay whole where they fit on a line of their own', () => {
    expect(brokenLines('Cornet’s Sunday cap', 4.5)).toEqual(['Cornet’s', 'Sunday', 'cap']);
  });

  it('are never parted from an accent, nor a sign put together of several from its parts', () => {
    // Unicode, UAX 29: each of these is one grapheme cluster.
    for (const letter of ['n\u0303', '\u{1f469}\u{1f3fd}\u200d\u{1f3a8}', '\u{1f1e8}\u{1f1ed}']) {
      const lines = brokenLines(letter.repeat(12), 5);
      expect(lines.length).toBeGreaterThan(1);
      for (const line of lines) expect(line.replaceAll(letter, '')).toBe('');
    }
  });
});
