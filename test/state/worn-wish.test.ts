import { describe, expect, test } from 'vitest';
import { decodeWorn, usualWorn } from '../../src/state/worn-wish.ts';

describe('how the cap is shown worn', () => {
  test('comes back as it was kept', () => {
    const kept = {
      place: 'instead',
      tilted: true,
      weave: 'checked',
      colour: '#102030',
      lining: '#405060',
    } as const;
    expect(decodeWorn(JSON.parse(JSON.stringify(kept)))).toEqual(kept);
  });

  test('takes its usual value wherever it is damaged or missing', () => {
    expect(decodeWorn(undefined)).toEqual(usualWorn);
    expect(decodeWorn('beside')).toEqual(usualWorn);
    expect(decodeWorn({ place: 'above', tilted: 'yes', weave: 'felt', colour: 'red' })).toEqual(usualWorn);
    expect(decodeWorn({ place: 'beside', colour: '#12345', lining: 7 })).toEqual({
      ...usualWorn,
      place: 'beside',
    });
  });
});
