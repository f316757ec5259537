import { describe, expect, test } from 'vitest';
import { fetchStyles } from '../../src/caps/registry.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { formatLength } from '../../src/units.ts';
import { say } from '../../src/words.ts';
import { HEADS } from './family.ts';
import { usualCaps } from './usual-caps.ts';

const styles = await fetchStyles();

/** Across the knuckles, mm: the mean of women is 78, of men 88 (ANSUR II, 2012; from memory). */
const HAND = 78;

describe('a turning gap', () => {
  const gaps = styles.flatMap((style) =>
    usualCaps(style, () => HEADS[3]!).flatMap((values) => {
      const { pieces } = style.draft(values, HEADS[3]!).pattern;
      const visored = pieces.some(({ id }) => id === 'visor');
      return pieces.flatMap(({ id, notes, marks }) =>
        marks.flatMap((mark) =>
          mark.kind === 'stretch' && mark.name === 'turning gap'
            ? [{ style: style.id, id, notes, visored, length: pathLength(mark.path) }]
            : [],
        ),
      );
    }),
  );

  test('is marked as long as the piece says it is left open', () => {
    expect(new Set(gaps.map(({ style, id }) => `${style} ${id}`)).size).toBe(5);
    for (const { style, id, notes, length } of gaps) {
      const [said, ...others] = notes
        .map((note) => say(note, 'cm'))
        .filter((note) => note.startsWith('Leave'));
      expect(others, `${style} ${id}`).toEqual([]);
      expect(said, `${style} ${id}`).toMatch(new RegExp(`^Leave ${formatLength(length, 'cm')} of `));
    }
  });

  test('lets a hand through wherever a whole cap is turned, with a visor or without', () => {
    for (const { style, id, length } of gaps.filter((gap) => gap.id !== 'strap'))
      expect(length, `${style} ${id}`).toBeGreaterThan(HAND);
  });

  test('says nothing of a visor where there is none', () => {
    const plain = gaps.filter(
      ({ style, id, visored }) => style === 'gored' && id === 'liningBand' && !visored,
    );
    expect(plain.length).toBeGreaterThan(0);
    for (const { notes } of plain) expect(notes.map((note) => say(note, 'cm')).join()).not.toMatch(/visor/);
  });
});
