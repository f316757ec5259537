import { describe, expect, it } from 'vitest';
import { decodeLay, type LayChoice, usualLay } from '../../src/state/lay-choice.ts';

const shelf = [{ id: 3 }, { id: 5 }];

describe('what is cut together', () => {
  it('is read back as it was kept', () => {
    const kept: LayChoice = {
      cloth: 'lining',
      here: 2,
      besides: { 3: 1, 5: 20 },
      pins: [{ piece: 'tip 1', container: 0, rotation: Math.PI / 2, x: -3.5, y: 120 }],
    };
    expect(decodeLay(JSON.parse(JSON.stringify(kept)), shelf)).toEqual(kept);
  });

  it('leaves out what is damaged, and caps that are no longer on the shelf', () => {
    expect(decodeLay(undefined, shelf)).toEqual(usualLay);
    expect(decodeLay('outer', shelf)).toEqual(usualLay);
    expect(decodeLay({ cloth: 'felt', here: 0, besides: 7, pins: {} }, shelf)).toEqual(usualLay);
    expect(decodeLay({ besides: { 3: 1.5, 4: 2, 5: 21 } }, shelf).besides).toEqual({});
    const pin = { piece: 'tip 1', container: 0, rotation: 0, x: 0, y: 0 };
    const damaged = [{ ...pin, x: null }, { ...pin, container: -1 }, { ...pin, piece: 1 }, null, pin];
    expect(decodeLay({ pins: damaged }, shelf).pins).toEqual([pin]);
  });
});
