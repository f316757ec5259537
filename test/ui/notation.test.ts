import { describe, expect, it } from 'vitest';
import { flatTopParameters } from '../../src/caps/flat-top/parameters.ts';
import { skullParameters } from '../../src/caps/skull/parameters.ts';
import { shoppingList } from '../../src/cloth/shopping.ts';
import { defaultSpec } from '../../src/design/default-spec.ts';
import { notationOf } from '../../src/ui/controls/notation.ts';
import { priceNotation, squareNotation, thicknessNotation } from '../../src/ui/controls/stage-notations.ts';
import { inches } from '../../src/units.ts';

describe('what the test square measured', () => {
  it('is read off a ruler in millimetres, or in inches against the 4 in square', () => {
    expect(squareNotation.read('98.5', 'cm')).toEqual({ ok: true, value: 98.5 });
    expect(squareNotation.read('9,85 cm', 'cm')).toEqual({ ok: true, value: 98.5 });
    const read = squareNotation.read('3 15/16', 'in');
    expect(read.ok && Number(read.value)).toBeCloseTo((3.9375 / 4) * 100, 9);
  });
  it('is written as it is read', () => {
    expect(squareNotation.write(100, 'cm')).toBe('100 mm');
    expect(squareNotation.write(98.5, 'cm')).toBe('98.5 mm');
    expect(squareNotation.write(100, 'in')).toBe('4 in');
  });
});

describe('a number alone, where a ruler’s millimetres are asked for', () => {
  it.each([
    ['0.5', 0.5],
    ['1/2', 0.5],
    ['½', 0.5],
    ['1 1/2', 1.5],
    ['1-1/2', 1.5],
    ['１½', 1.5],
    ['0.05 cm', 0.5],
    ['1/2 in', 12.7],
    ['½”', 12.7],
  ])('%s is %d mm, a fraction no less than a decimal', (text, mm) => {
    const read = thicknessNotation.read(text, 'cm');
    expect(read.ok && Number(read.value)).toBeCloseTo(mm, 9);
  });
  it('is so of the test square too', () => {
    expect(squareNotation.read('98 1/2', 'cm')).toEqual({ ok: true, value: 98.5 });
    expect(squareNotation.read('98½', 'cm')).toEqual({ ok: true, value: 98.5 });
  });
});

describe('a price', () => {
  it('is that of a yard where cloth is bought by the yard, 0.9144 m, and kept as that of a metre', () => {
    const read = priceNotation.read('12', 'in');
    expect(read.ok && Number(read.value)).toBeCloseTo(12 / 0.9144, 9);
    expect(priceNotation.write(12 / 0.9144, 'in')).toBe('12.00');
    expect(priceNotation.write(12 / 0.9144, 'cm')).toBe('13.12');
    // A yard and a half at 12 a yard.
    const cloths = {
      ...defaultSpec.cloths,
      outer: { ...defaultSpec.cloths.outer, price: read.ok ? Number(read.value) : null },
    };
    const own = { width: inches(44), length: inches(54) };
    expect(shoppingList([], cloths, { outer: { own, common: [] } }, 'in').cost).toBeCloseTo(18, 9);
  });

  it('is refused where it is larger than is kept', () => {
    expect(priceNotation.read('14,50', 'cm')).toEqual({ ok: true, value: 14.5 });
    expect(priceNotation.read('100001', 'cm').ok).toBe(false);
  });
});

describe('a field of the cap', () => {
  it('reads back what it writes, to what the writing shows', () => {
    for (const parameter of Object.values(flatTopParameters)) {
      if (!['length', 'angle', 'ratio'].includes(parameter.kind)) continue;
      const value = Number(parameter.default);
      for (const unit of ['cm', 'in'] as const) {
        const notation = notationOf(parameter);
        const read = notation.read(notation.write(value, unit), unit);
        const shown = parameter.kind === 'length' ? (unit === 'cm' ? 0.5 : inches(1 / 32)) : 0.001;
        expect(read.ok && Math.abs(Number(read.value) - value), parameter.label).toBeLessThanOrEqual(
          shown + 1e-9,
        );
      }
    }
  });

  it('takes less than nothing where that can be wished, with whichever minus is at hand', () => {
    const room = notationOf(skullParameters.crownRoom);
    for (const unit of ['cm', 'in'] as const) {
      const read = room.read(room.write(-25.4, unit), unit);
      expect(read.ok && Number(read.value)).toBeCloseTo(-25.4, unit === 'cm' ? 0 : 9);
    }
    expect(room.read('-1.6', 'cm')).toEqual({ ok: true, value: -16 });
    expect(room.read('− 1/2 in', 'cm')).toEqual({ ok: true, value: -12.7 });
    expect(room.read('1.6', 'cm')).toEqual({ ok: true, value: 16 });
    expect(room.read('--1.6', 'cm').ok).toBe(false);
    expect(notationOf(skullParameters.ease).read('-1.6', 'cm').ok).toBe(false);
  });
});
