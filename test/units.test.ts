import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  formatAllowance,
  formatAngle,
  formatFraction,
  formatLength,
  formatRatio,
  formatRow,
  parseAngle,
  parseLength,
  parseRatio,
  parseRow,
  type Unit,
} from '../src/units.ts';

/** Rounding of doubles, mm: far below anything that is typed. */
const ROUNDING = 1e-9;

const mmOf = (text: string, unit: Unit): number => {
  const read = parseLength(text, unit);
  if (!read.ok) throw new Error(read.message);
  return read.mm;
};
const refusal = (text: string, unit: Unit = 'cm'): string => {
  const read = parseLength(text, unit);
  return read.ok ? `read as ${read.mm} mm` : read.message;
};
const rowOf = (text: string, unit: Unit): readonly number[] => {
  const read = parseRow(text, unit);
  if (!read.ok) throw new Error(read.message);
  return read.mm;
};
const expectRow = (text: string, unit: Unit, row: readonly number[]): void => {
  const read = rowOf(text, unit);
  expect(read).toHaveLength(row.length);
  row.forEach((mm, i) => {
    expect(Math.abs(read[i]! - mm), text).toBeLessThan(ROUNDING);
  });
};

describe('a typed length', () => {
  // The inch is 25.4 mm exactly (international yard and pound agreement, 1959), so 21 1/2 in is 546.1 mm.
  it.each([
    '21 1/2 in',
    '21 1/2 inches',
    '21 1/2"',
    '21½ in',
    '21 ½ in',
    '21½"',
    '21-1/2 inches',
    '21–1/2 in.',
    '21 - 1/2 inch',
    '21 1⁄2 in',
    '21¹⁄₂ in',
    '21\u00a01/2\u202fin',
    '  21 1 / 2  IN ',
    '21.5 in',
    '21,5in',
    '21.5”',
    '21.5″',
    "21.5''",
    '２１．５ in',
    '43/2 in',
    '54.61 cm',
    '54,61cm',
    '54.61 ㎝',
    '546.1 mm',
    '546,1 millimetres',
    '２１½ in',
    '0,5461 m',
    '.5461 meters',
  ])('%s is 546.1 mm, whatever the current unit', (text) => {
    for (const unit of ['cm', 'in'] as const)
      expect(Math.abs(mmOf(text, unit) - 546.1)).toBeLessThan(ROUNDING);
  });

  // The yard is 0.9144 m exactly, by the same agreement.
  it.each([
    ['1 yd', 914.4],
    ['1/2 yd', 457.2],
    ['1 1/8 yd.', 1028.7],
    ['2 yards', 1828.8],
    ['0,5 Yard', 457.2],
    ['3yds', 2743.2],
  ])('%s is read as cloth is bought by it, and as inches are', (text, mm) => {
    for (const unit of ['cm', 'in'] as const) {
      expect(Math.abs(mmOf(text, unit) - mm)).toBeLessThan(ROUNDING);
      expect(parseLength(text, unit)).toMatchObject({ unit: 'in' });
    }
    expect(parseRow('1 yd; 2 yd', 'cm')).toMatchObject({ ok: true, unit: 'in' });
  });

  it('is in the current unit where no unit is written', () => {
    expect(mmOf('54.6', 'cm')).toBeCloseTo(546, 9);
    expect(mmOf('21 1/2', 'in')).toBeCloseTo(546.1, 9);
    expect(mmOf('5/8', 'in')).toBeCloseTo(15.875, 9);
    expect(mmOf('⅝', 'in')).toBeCloseTo(15.875, 9);
    expect(mmOf('0', 'in')).toBe(0);
  });

  it('tells the unit it was understood in: the written one before the current one', () => {
    expect(parseLength('21 1/2', 'in')).toMatchObject({ ok: true, unit: 'in' });
    expect(parseLength('21 1/2 in', 'cm')).toMatchObject({ ok: true, unit: 'in' });
    expect(parseLength('546 mm', 'in')).toMatchObject({ ok: true, unit: 'cm' });
  });

  // Unicode character names: VULGAR FRACTION ONE QUARTER and so on.
  it.each([
    ['¼', 1 / 4],
    ['½', 1 / 2],
    ['¾', 3 / 4],
    ['⅓', 1 / 3],
    ['⅔', 2 / 3],
    ['⅕', 1 / 5],
    ['⅛', 1 / 8],
    ['⅜', 3 / 8],
    ['⅝', 5 / 8],
    ['⅞', 7 / 8],
    ['⅐', 1 / 7],
    ['⅑', 1 / 9],
    ['⅒', 1 / 10],
    ['⅟₁₆', 1 / 16],
    ['³⁄₁₆', 3 / 16],
  ])('reads the fraction sign %s, alone and close behind a number', (sign, value) => {
    expect(mmOf(sign, 'in')).toBeCloseTo(value * 25.4, 9);
    expect(mmOf(`12${sign}`, 'in')).toBeCloseTo((12 + value) * 25.4, 9);
    expect(mmOf(`12 ${sign}`, 'in')).toBeCloseTo((12 + value) * 25.4, 9);
  });

  it.each([
    ['', 'cm', 'Type a length such as 54.6 or 21 1/2 in.'],
    ['  ', 'in', 'Type a length such as 21 1/2 or 54.6 cm.'],
    ['in', 'cm', 'Type a length'],
    ['twenty', 'cm', '“twenty” cannot be read.'],
    ['54 kg', 'cm', 'cannot be read'],
    ['NaN', 'cm', 'cannot be read'],
    ['Infinity', 'cm', 'cannot be read'],
    ['1e3', 'cm', 'cannot be read'],
    ['.', 'cm', 'cannot be read'],
    ['1/', 'cm', 'cannot be read'],
    ['-5', 'cm', 'A length cannot be negative.'],
    ['−21 1/2', 'in', 'A length cannot be negative.'],
    ['-½', 'in', 'A length cannot be negative.'],
    ['21 1/0', 'in', 'A fraction cannot have 0 under its line.'],
    ['1,234.5', 'cm', 'one point or one comma'],
    ['1.234.5', 'cm', 'one point or one comma'],
    ['1,234 mm', 'cm', 'two ways'],
    ['54 55', 'cm', 'Write one number at a time.'],
    ['21 1/2 1/4', 'in', 'Write one number at a time.'],
    ['21.5 1/2', 'in', 'Write one number at a time.'],
    ['21 in 5 in', 'in', 'cannot be read'],
    ['9'.repeat(400), 'cm', 'too large'],
    ['9'.repeat(20), 'cm', 'too large'],
    ['100.1 m', 'cm', 'too large'],
  ] as const)('%j is refused, and the message says what would work', (text, unit, reason) => {
    expect(refusal(text, unit)).toContain(reason);
    expect(refusal(text, unit)).toMatch(/Type a length such as .*\.$/);
  });

  it('takes a comma for a decimal comma where three figures after it are likely: eighths of an inch', () => {
    expect(mmOf('1,375 in', 'cm')).toBeCloseTo(1.375 * 25.4, 9);
    expect(mmOf('0,546 m', 'cm')).toBeCloseTo(546, 9);
  });

  it('quotes only the start of a long text that cannot be read', () => {
    expect(refusal('wool '.repeat(50)).length).toBeLessThan(100);
  });

  it('never throws, and reads nothing but finite lengths from nought up', () => {
    const anything = fc.oneof(
      fc.string(),
      fc.string({ unit: fc.constantFrom(...'0123456789 .,/½⅞-−"\'inmcft') }),
    );
    fc.assert(
      fc.property(anything, fc.constantFrom<Unit>('cm', 'in'), (text, unit) => {
        const read = parseLength(text, unit);
        return read.ok ? read.mm >= 0 && read.mm < Infinity : read.message.length > 0;
      }),
    );
  });
});

describe('a written length', () => {
  it.each([
    [546, 'cm', '54.6 cm'],
    [546.1, 'in', '21 1/2 in'],
    [6.35, 'in', '1/4 in'],
    // Two and a half inches, typed and measured: one figure.
    [63.5, 'cm', '6.4 cm'],
    [63.49999999999999, 'cm', '6.4 cm'],
    [0, 'in', '0 in'],
    [0, 'cm', '0.0 cm'],
    [25.4, 'in', '1 in'],
    [25.4 * (1 - 1 / 64), 'in', '1 in'],
    [25.4 * (2 + 3 / 8), 'in', '2 3/8 in'],
    [25.4 * (2 + 15 / 16), 'in', '2 15/16 in'],
    [-12.7, 'in', '−1/2 in'],
    [-31.75, 'in', '−1 1/4 in'],
    [-12.7, 'cm', '−1.3 cm'],
    [-0.01, 'in', '0 in'],
    [-0.01, 'cm', '0.0 cm'],
    [Number.NaN, 'cm', '– cm'],
    [Infinity, 'in', '– in'],
  ] as const)('%d mm in %s is "%s"', (mm, unit, text) => {
    expect(formatLength(mm, unit)).toBe(text);
  });

  it('has decimals for arithmetic', () => {
    // The tip radius of common practice: a girth of 26 in, so 26 / 2π = 4.138 in.
    expect(formatLength((26 / (2 * Math.PI)) * 25.4, 'in', { decimals: 3 })).toBe('4.138 in');
    expect(formatLength(105.1, 'cm', { decimals: 2 })).toBe('10.51 cm');
  });

  it('goes finer for small things', () => {
    expect(formatLength(1.5, 'cm', { finer: true })).toBe('0.15 cm');
    expect(formatLength(25.4 * (3 / 32), 'in', { finer: true })).toBe('3/32 in');
  });

  it('can leave the unit to the field it stands in', () => {
    expect(formatLength(546, 'cm', { bare: true })).toBe('54.6');
    expect(formatLength(546.1, 'in', { bare: true })).toBe('21 1/2');
  });

  const lengths = fc.double({ min: 0, max: 5000, noNaN: true });

  it.each([
    ['cm', {}, 0.5],
    ['cm', { finer: true }, 0.05],
    ['cm', { decimals: 3 }, 0.005],
    ['in', {}, 25.4 / 32],
    ['in', { finer: true }, 25.4 / 64],
    ['in', { decimals: 3 }, 0.0127],
  ] as const)('in %s with %o is read back to half of its last place', (unit, format, half) => {
    fc.assert(
      fc.property(lengths, fc.constantFrom<Unit>('cm', 'in'), (mm, current) => {
        const withUnit = parseLength(formatLength(mm, unit, format), current);
        const bare = parseLength(formatLength(mm, unit, { ...format, bare: true }), unit);
        if (!withUnit.ok || !bare.ok) return false;
        return withUnit.unit === unit && withUnit.mm === bare.mm && Math.abs(bare.mm - mm) <= half + ROUNDING;
      }),
    );
  });

  it('comes back letter for letter when it is read and written again', () => {
    fc.assert(
      fc.property(lengths, fc.constantFrom<Unit>('cm', 'in'), fc.boolean(), (mm, unit, finer) => {
        const text = formatLength(mm, unit, { finer });
        return formatLength(mmOf(text, unit), unit, { finer }) === text;
      }),
    );
  });

  it('writes fractions in lowest terms', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2000 }), (sixteenths) => {
        const text = formatFraction(sixteenths / 16, 16);
        const [, whole = '0', over = '0', under = '1'] = /^(\d+)?(?:(?:^| )(\d+)\/(\d+))?$/.exec(text)!;
        const sum = Number(whole) * 16 + (Number(over) * 16) / Number(under);
        return (
          sum === sixteenths && (over === '0' || (Number(over) % 2 === 1 && Number(over) < Number(under)))
        );
      }),
    );
  });
});

describe('a typed row of lengths', () => {
  it('is parted by semicolons, line ends, commas with a blank, or blanks', () => {
    const row = [60, 58, 50, 36, 18];
    expectRow('6; 5.8; 5; 3.6; 1.8', 'cm', row);
    expectRow('6;5,8;5;3,6;1,8;', 'cm', row);
    expectRow('6, 5.8, 5, 3.6, 1.8', 'cm', row);
    expectRow('6, 5,8, 5, 3,6, 1,8', 'cm', row);
    expectRow('6 5.8  5 3,6 1.8', 'cm', row);
    expectRow('6\n5.8\r\n5\n3.6\t1.8\n', 'cm', row);
  });

  it('takes the unit once at the end for all, or after every length', () => {
    expectRow('60 58 50 36 18 mm', 'in', [60, 58, 50, 36, 18]);
    expectRow('60 mm 58 mm', 'in', [60, 58]);
    expectRow('2½"; 2"', 'cm', [63.5, 50.8]);
    expectRow('6 cm, 50 mm', 'in', [60, 50]);
    expect(parseRow('60 58 mm', 'in')).toMatchObject({ unit: 'cm' });
    expect(parseRow('2; 1 in', 'cm')).toMatchObject({ unit: 'in' });
    expect(parseRow('60 mm 58', 'cm')).toMatchObject({ ok: false, message: expect.stringContaining('unit') });
  });

  it('refuses a fraction after a blank that could be one length or two, and takes the clear ways of writing it', () => {
    expect(parseRow('2 3/8 2 1/4', 'in')).toMatchObject({
      ok: false,
      message: expect.stringContaining('Part the lengths with semicolons: 2 3/8; 2 1/4; 2.'),
    });
    const row = [2.375 * 25.4, 2.25 * 25.4];
    expectRow('2 3/8; 2 1/4', 'in', row);
    expectRow('2 3/8, 2 1/4', 'in', row);
    expectRow('2-3/8 2-1/4', 'in', row);
    expectRow('2⅜ 2¼', 'in', row);
    expectRow('2 3/8', 'in', [2.375 * 25.4]);
    expectRow('3/8 1/4', 'in', [0.375 * 25.4, 0.25 * 25.4]);
  });

  it('refuses what is no row of lengths', () => {
    for (const text of ['60,58,50', 'wide', '6; -5', '6; 5 4', '1/0 2'])
      expect(parseRow(text, 'cm'), text).toMatchObject({
        ok: false,
        message: expect.stringContaining('semicolons'),
      });
  });

  it('may be empty', () => {
    expectRow('', 'cm', []);
    expectRow(' ; \n', 'cm', []);
  });

  it('is read back as it was written', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 4000 }), { maxLength: 12 }),
        fc.constantFrom<Unit>('cm', 'in'),
        fc.boolean(),
        (steps, unit, bare) => {
          const row = steps.map((n) => (unit === 'cm' ? n : (n * 25.4) / 16));
          const text = formatRow(row, unit, { bare });
          const read = rowOf(text, unit);
          return read.length === row.length && read.every((mm, i) => Math.abs(mm - row[i]!) < ROUNDING);
        },
      ),
    );
  });
});

describe('an angle', () => {
  it('is read in degrees', () => {
    for (const text of ['30', '30°', '30 °', '30º', '30˚', '30 deg', '30 degrees', '30,0'])
      expect(parseAngle(text), text).toMatchObject({ ok: true, radians: Math.PI / 6 });
  });

  it('is refused with what would work', () => {
    for (const text of ['', 'steep', '-5', '30 40', '1/0'])
      expect(parseAngle(text), text).toMatchObject({
        ok: false,
        message: expect.stringContaining('Type an angle in degrees, such as 30.'),
      });
  });

  it('is written in degrees', () => {
    expect(formatAngle(Math.PI / 6)).toBe('30°');
    expect(formatAngle(Math.PI / 8)).toBe('22.5°');
    expect(formatAngle(-Math.PI / 4)).toBe('−45°');
    expect(formatAngle(0.8, { decimals: 3 })).toBe('45.837°');
    expect(formatAngle(Math.PI / 6, { bare: true })).toBe('30');
  });

  it('is read back to half of its last place', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }), fc.boolean(), (radians, bare) => {
        const read = parseAngle(formatAngle(radians, { bare }));
        return read.ok && Math.abs(read.radians - radians) <= (0.05 * Math.PI) / 180 + ROUNDING;
      }),
    );
  });
});

describe('a part of one', () => {
  it.each([
    ['80 %', 0.8],
    ['80%', 0.8],
    ['80 percent', 0.8],
    ['80', 0.8],
    ['0.8', 0.8],
    ['0,8', 0.8],
    ['4/5', 0.8],
    ['1.0', 1],
    ['1', 0.01],
    ['100', 1],
    ['2.5', 0.025],
    ['0.5 %', 0.005],
  ])('%s is %d', (text, value) => {
    const read = parseRatio(text);
    expect(read.ok && Math.abs(read.ratio - value) < ROUNDING).toBe(true);
  });

  it('is refused with what would work', () => {
    for (const text of ['', '%', 'full', '-5', '80 90'])
      expect(parseRatio(text), text).toMatchObject({
        ok: false,
        message: expect.stringContaining('Type percent, such as 80.'),
      });
  });

  it('is written in percent', () => {
    expect(formatRatio(0.8)).toBe('80 %');
    expect(formatRatio(0.025)).toBe('2.5 %');
    expect(formatRatio(-0.1)).toBe('−10 %');
    expect(formatRatio(0.8, { bare: true })).toBe('80');
    expect(formatRatio(0.7735, { decimals: 2 })).toBe('77.35 %');
  });

  it('is read back to half of its last place, with its sign and without', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 3, noNaN: true }), fc.boolean(), (ratio, bare) => {
        const read = parseRatio(formatRatio(ratio, { bare }));
        return read.ok && Math.abs(read.ratio - ratio) <= 0.0005 + ROUNDING;
      }),
    );
    expect(parseRatio(formatRatio(0.005, { bare: true }))).toMatchObject({ ratio: 0.005 });
  });
});

it('an allowance reads on paper and in the guide as it does beside its slider: inches in sixteenths', () => {
  // 20 mm = 0.787 in, between 25/32 and 13/16: nearest of the sixteenths is 12.6, that is 13/16.
  expect(formatAllowance(20, 'in')).toBe('13/16 in');
  expect(formatAllowance(20, 'in')).toBe(formatLength(20, 'in'));
  // In centimetres a quarter inch is not a tenth: it keeps the second decimal.
  expect(formatAllowance(6.35, 'cm')).toBe('0.64 cm');
  expect(formatAllowance(10, 'cm')).toBe('1.0 cm');
});
