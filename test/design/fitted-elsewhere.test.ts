import { expect, test } from 'vitest';
import { demoHeads } from '../../src/design/demo-band.ts';
import { fittedElsewhere } from '../../src/design/fitted-elsewhere.ts';
import { withNote } from '../../src/design/head-cards.ts';

const note = (ease: number) => ({
  date: '2026-11-28',
  style: 'flat-top',
  found: ['It is tight'],
  changed: { ease: [12.7, ease] as const },
});

test('an ease that fitted one head is known on a head that was never fitted, and no longer once that was', () => {
  const [cornet, horn, euphonium] = demoHeads as [
    (typeof demoHeads)[0],
    (typeof demoHeads)[0],
    (typeof demoHeads)[0],
  ];
  const fitted = withNote(withNote(cornet, note(18)), note(22));
  const cards = [fitted, horn, euphonium];
  expect(fittedElsewhere(cards, horn, { ease: 22, crownFullness: 90 })).toEqual({ ease: fitted });
  // What was tried first did not fit.
  expect(fittedElsewhere(cards, horn, { ease: 18 })).toEqual({});
  expect(fittedElsewhere(cards, horn, { ease: 12.7 })).toEqual({});
  expect(fittedElsewhere(cards, fitted, { ease: 22 })).toEqual({});
  expect(fittedElsewhere(cards, withNote(horn, note(22)), { ease: 22 })).toEqual({});
});
