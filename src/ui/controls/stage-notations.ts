/** Notations that only the stages Cloth and Paper use: they are fetched with them. */
import {
  formatLength,
  formatThickness,
  inches,
  LARGEST,
  MM_PER_YARD,
  parseLength,
  type Unit,
} from '../../units.ts';
import { lengthNotation, type Notation } from './notation.ts';

/** A number without a unit, with its fraction if it has one. */
const LONE = /^[\p{N}.,\s/⁄∕‐-―−-]+$/u;

/** The test square of the unit in use, mm. */
const squareOf = (unit: Unit): number => (unit === 'cm' ? 100 : inches(4));

/**
 * What a test square measured, kept as what the 100 mm square would measure. In inches the 4 in square is measured.
 * A lone number is in millimetres, or inches.
 */
export const squareNotation: Notation = {
  write: (value, unit) => {
    const measured = (Number(value) / 100) * squareOf(unit);
    return unit === 'cm' ? `${+measured.toFixed(2)} mm` : formatLength(measured, unit, { finer: true });
  },
  read: (text, unit) => {
    const read = parseLength(unit === 'cm' && LONE.test(text) ? `${text} mm` : text, unit);
    return read.ok ? { ok: true, value: (read.mm / squareOf(unit)) * 100 } : read;
  },
  figures: (unit) => unit === 'cm',
};

/** A thickness: in millimetres, or a fraction of an inch. A lone number is read so too. */
export const thicknessNotation: Notation = {
  write: (value, unit) => formatThickness(Number(value), unit),
  read: (text, unit) => lengthNotation.read(unit === 'cm' && LONE.test(text) ? `${text} mm` : text, unit),
  figures: (unit) => unit === 'cm',
};

/** What a shop's price is for, in metres. */
const SOLD_BY: Readonly<Record<Unit, number>> = { cm: 1, in: MM_PER_YARD / 1000 };

/** A price in the user's own money: of a metre, as it is kept, or of a yard. */
export const priceNotation: Notation = {
  write: (value, unit) => (Number(value) * SOLD_BY[unit]).toFixed(2),
  read: (text, unit) => {
    const price = LONE.test(text) ? Number(text.trim().replace(',', '.')) : Number.NaN;
    return price <= LARGEST
      ? { ok: true, value: price / SOLD_BY[unit] }
      : { ok: false, message: 'Type the price as a number, such as 14.50.' };
  },
  figures: () => true,
};
