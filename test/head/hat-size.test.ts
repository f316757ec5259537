import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { girthOfHatSize, type HatSystem, hatSize, hatSizes } from '../../src/head/hat-size.ts';

const SYSTEMS: readonly HatSystem[] = ['eu', 'uk', 'us', 'french'];
const labels = (system: HatSystem): readonly string[] => hatSizes(system).map(({ label }) => label);

describe('hat sizes', () => {
  it('run from the smallest child’s to the largest adult’s of the published tables, without a gap', () => {
    expect(labels('us').slice(0, 5)).toEqual(['5', '5 1/8', '5 1/4', '5 3/8', '5 1/2']);
    expect(labels('us').at(-1)).toBe('8 1/4');
    expect([labels('uk')[0], labels('uk').at(-1)]).toEqual(['4 7/8', '8 1/8']);
    expect([labels('eu')[0], labels('eu').at(-1), labels('eu').length]).toEqual(['40', '66', 27]);
    expect([labels('french')[0], labels('french')[1], labels('french').at(-1)]).toEqual([
      '0',
      '1/2',
      '9 1/2',
    ]);
    for (const system of SYSTEMS) {
      const girths = hatSizes(system).map(({ girth }) => girth);
      expect(girths).toEqual(girths.toSorted((a, b) => a - b));
      expect(new Set(labels(system)).size).toBe(girths.length);
    }
  });

  it('come back as themselves from the girth they stand for', () => {
    for (const system of SYSTEMS)
      for (const size of hatSizes(system)) {
        expect(size.girth).toBe(girthOfHatSize(size.value, system));
        expect(hatSize(size.girth, system)).toEqual(size);
      }
  });

  it('are given only where the tables reach', () => {
    for (const girth of [380, 680, Number.NaN, Infinity])
      for (const system of SYSTEMS) expect(hatSize(girth, system)).toBeNull();
    expect(hatSize(460, 'french')).toBeNull();
    expect(hatSize(460, 'eu')?.label).toBe('46');
  });

  it('never run down as the head grows', () => {
    const girth = fc.double({ min: 480, max: 650, noNaN: true });
    fc.assert(
      fc.property(
        girth,
        fc.double({ min: 0, max: 10, noNaN: true }),
        fc.constantFrom(...SYSTEMS),
        (a, more, system) => {
          return hatSize(a + more, system)!.value >= hatSize(a, system)!.value;
        },
      ),
    );
  });

  // Common practice: a girth between two marks of the tape goes up to the next centimetre.
  it('take a metric size up to the next whole centimetre, but not for less than a tape can show', () => {
    expect(hatSize(560, 'eu')?.label).toBe('56');
    expect(hatSize(560.4, 'eu')?.label).toBe('56');
    expect(hatSize(561, 'eu')?.label).toBe('57');
    expect(hatSize(569.9, 'eu')?.label).toBe('57');
  });

  it('take a US size to the nearest eighth, so that its girth is within half a step', () => {
    const halfStep = (25.4 * Math.PI) / 16;
    fc.assert(
      fc.property(fc.double({ min: 480, max: 650, noNaN: true }), (girth) => {
        return Math.abs(hatSize(girth, 'us')!.girth - girth) <= halfStep + 1e-9;
      }),
    );
  });
});
