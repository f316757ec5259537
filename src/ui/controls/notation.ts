import type { Parameter, ParameterValue } from '../../caps/parameter.ts';
import {
  formatAngle,
  formatLength,
  formatRatio,
  formatRow,
  type LengthFormat,
  parseAngle,
  parseLength,
  parseRatio,
  parseRow,
  type Unit,
} from '../../units.ts';

export type Read =
  | { readonly ok: true; readonly value: ParameterValue }
  | { readonly ok: false; readonly message: string };

/** How one kind of value is written in a field, and read back. */
export interface Notation {
  readonly write: (value: ParameterValue, unit: Unit) => string;
  readonly read: (text: string, unit: Unit) => Read;
  /** Figures alone will do, so that a phone may show its figure keys. */
  readonly figures: (unit: Unit) => boolean;
}

const lengths = (format: LengthFormat): Notation => ({
  write: (value, unit) => formatLength(Number(value), unit, format),
  read: (text, unit) => {
    const read = parseLength(text, unit);
    return read.ok ? { ok: true, value: read.mm } : read;
  },
  figures: (unit) => unit === 'cm',
});

export const lengthNotation = lengths({});
const fineLengthNotation = lengths({ finer: true });

/** For lengths that may be less than nothing: more or less room. A phone's figure keys have no minus. */
const signed = (notation: Notation): Notation => ({
  ...notation,
  read: (text, unit) => {
    const bare = text.replace(/^\s*[-‐-―−]\s*/, '');
    const read = notation.read(bare, unit);
    return read.ok && bare !== text ? { ok: true, value: -Number(read.value) } : read;
  },
  figures: () => false,
});
const signedLengthNotation = signed(lengthNotation);

const angleNotation: Notation = {
  write: (value) => formatAngle(Number(value)),
  read: (text) => {
    const read = parseAngle(text);
    return read.ok ? { ok: true, value: read.radians } : read;
  },
  figures: () => true,
};

export const ratioNotation: Notation = {
  write: (value) => formatRatio(Number(value)),
  read: (text) => {
    const read = parseRatio(text);
    return read.ok ? { ok: true, value: read.ratio } : read;
  },
  figures: () => true,
};

const countNotation: Notation = {
  write: (value) => String(value),
  read: (text) => {
    const count = /^\s*\d{1,3}\s*$/.test(text) ? Number(text) : Number.NaN;
    return Number.isInteger(count)
      ? { ok: true, value: count }
      : { ok: false, message: 'A whole number, please.' };
  },
  figures: () => true,
};

const rowNotation: Notation = {
  write: (value, unit) => (Array.isArray(value) ? formatRow(value, unit) : ''),
  read: (text, unit) => {
    const read = parseRow(text, unit);
    return read.ok ? { ok: true, value: read.mm } : read;
  },
  figures: () => false,
};

/** Lengths chosen in steps under a millimetre are written finer. */
export const notationOf = (parameter: Parameter): Notation => {
  switch (parameter.kind) {
    case 'angle':
      return angleNotation;
    case 'ratio':
      return ratioNotation;
    case 'count':
      return countNotation;
    case 'row':
      return rowNotation;
    case 'length':
      if (parameter.min < 0) return signedLengthNotation;
      return parameter.step < 1 ? fineLengthNotation : lengthNotation;
    default:
      return lengthNotation;
  }
};
