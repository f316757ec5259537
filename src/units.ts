/** How lengths are shown and typed. Inside the program a length is always millimetres. */
export type Unit = 'cm' | 'in';

export const MM_PER_INCH = 25.4;
export const MM_PER_YARD = 36 * MM_PER_INCH;
export const inches = (n: number): number => n * MM_PER_INCH;
export const degrees = (n: number): number => (n * Math.PI) / 180;

/** No number typed or kept is larger: as a length in mm it is longer than any roll of paper or bolt of cloth. */
export const LARGEST = 1e5;

/** Decimals that let a figure of drafting arithmetic be followed: a tenth of a millimetre, a thousandth of an inch. */
export const EXACT_DECIMALS: Readonly<Record<Unit, number>> = { cm: 2, in: 3 };

export interface LengthFormat {
  /** Decimals in either unit, instead of fractions for inches. */
  readonly decimals?: number;
  /** For lengths chosen in steps under 1 mm: two decimals of a centimetre, 1/32 of an inch. */
  readonly finer?: boolean;
  /** The number alone, for a field that shows its unit beside it. */
  readonly bare?: boolean;
}

/**
 * A length in mm as people write it: "54.6 cm" or "21 1/2 in". Centimetres to one decimal; inches as a mixed
 * fraction to the nearest 1/16, reduced. Below nought with a true minus sign; a length that is no number is a dash.
 */
export const formatLength = (mm: number, unit: Unit, format: LengthFormat = {}): string => {
  const { decimals, finer = false, bare = false } = format;
  const size = unit === 'cm' ? mm / 10 : mm / MM_PER_INCH;
  const asFraction = unit === 'in' && decimals === undefined;
  const text = asFraction ? formatFraction(size, finer ? 32 : 16) : fixed(size, decimals ?? (finer ? 2 : 1));
  return bare ? text : `${text} ${unit}`;
};

/** A thickness in mm as people write it: "0.8 mm" or "0.031 in". */
export const formatThickness = (mm: number, unit: Unit): string =>
  unit === 'cm' ? `${+mm.toFixed(2)} mm` : formatLength(mm, unit, { decimals: 3 });

/** A seam allowance, mm, as it was chosen: 1/4 in is "0.64 cm", and 10 mm is "1.0 cm". */
export const formatAllowance = (mm: number, unit: Unit): string => {
  const tenths = unit === 'in' || Math.abs(mm - Math.round(mm)) < 0.005;
  return formatLength(mm, unit, { finer: !tenths });
};

/** A row of lengths, mm, as `parseRow` reads it back: parted by semicolons, with the unit once at the end. */
export const formatRow = (row: readonly number[], unit: Unit, format: LengthFormat = {}): string => {
  const text = row.map((mm) => formatLength(mm, unit, { ...format, bare: true })).join('; ');
  return format.bare || row.length === 0 ? text : `${text} ${unit}`;
};

/** An angle in radians as degrees: "30°", "12.5°". One decimal at most unless more are asked for. */
export const formatAngle = (
  radians: number,
  { decimals, bare = false }: { readonly decimals?: number; readonly bare?: boolean } = {},
): string => `${briefly((radians * 180) / Math.PI, decimals)}${bare ? '' : '°'}`;

/**
 * A part of one as percent: "80 %", "2.5 %". One decimal at most unless more are asked for. The bare number keeps
 * its sign where it would otherwise be read back as a part of one ("0.5 %").
 */
export const formatRatio = (
  ratio: number,
  { decimals, bare = false }: { readonly decimals?: number; readonly bare?: boolean } = {},
): string => {
  const text = briefly(ratio * 100, decimals);
  const readAsPart = text.includes('.') && Number(text) <= 1;
  return bare && !readAsPart ? text : `${text} %`;
};

/** Lifts a half that binary fractions hold a hair too low, so that 6.35 and a measured 6.350000001 read alike. */
const HAIR = 1e-9;

/** A number with a fixed count of decimals, halves rounded up, and a true minus. */
const fixed = (n: number, decimals: number): string => {
  if (!Number.isFinite(n)) return '–';
  const text = (Math.abs(n) + HAIR).toFixed(decimals);
  return n < 0 && Number(text) !== 0 ? `−${text}` : text;
};

const briefly = (n: number, decimals?: number): string =>
  decimals === undefined ? fixed(n, 1).replace(/\.0$/, '') : fixed(n, decimals);

/** A mixed fraction to the nearest 1/parts (a power of two), reduced: "7 1/8". */
export const formatFraction = (n: number, parts: number): string => {
  if (!Number.isFinite(n)) return '–';
  const count = Math.round(Math.abs(n) * parts);
  const whole = Math.floor(count / parts);
  let [over, under] = [count % parts, parts];
  while (over > 0 && over % 2 === 0) [over, under] = [over / 2, under / 2];
  const fraction = over > 0 ? `${over}/${under}` : '';
  const text = [whole > 0 || over === 0 ? `${whole}` : '', fraction].filter(Boolean).join(' ');
  return n < 0 && count > 0 ? `−${text}` : text;
};

interface Refusal {
  readonly ok: false;
  /** What is wrong and what would work, in plain words. */
  readonly message: string;
}

/** mm, and the unit the text was understood in: what was written, or else the current one. */
export type ParsedLength = { readonly ok: true; readonly mm: number; readonly unit: Unit } | Refusal;
export type ParsedRow = { readonly ok: true; readonly mm: readonly number[]; readonly unit: Unit } | Refusal;
export type ParsedAngle = { readonly ok: true; readonly radians: number } | Refusal;
export type ParsedRatio = { readonly ok: true; readonly ratio: number } | Refusal;

/**
 * A length as people type it: `21 1/2`, `21½ in`, `21-1/2"`, `54,6`, `546 mm`, `0.546 m`, `1/2 yd`; a lone number is
 * in the current unit. A comma is a decimal comma; where it could as well part thousands (`1,234 mm`, `1,234.5`) the text
 * is refused. So are words, negative lengths, and two lengths at once.
 */
export const parseLength = (text: string, unit: Unit): ParsedLength => {
  const read = readLength(tidy(text));
  if (typeof read === 'string') return { ok: false, message: `${read} ${LENGTH_HINT[unit]}`.trim() };
  const measure = read.measure ?? unit;
  const mm = read.value * MM_PER[measure];
  if (mm > LARGEST) return { ok: false, message: `${TOO_LARGE} ${LENGTH_HINT[unit]}` };
  return { ok: true, mm, unit: unitOf(measure) };
};

/**
 * A row of lengths parted by semicolons, line ends, commas with a space after them, or blanks. The unit may stand
 * after every length, or once after the last for all. A text that is one length is a row of one. Otherwise, parted by
 * blanks alone, `2 3/8` could be one length or two and is refused; `2; 3/8`, `2 3/8; 2`, `2-3/8 2` and `2⅜ 2` are
 * clear. An empty text is an empty row.
 */
export const parseRow = (text: string, unit: Unit): ParsedRow => {
  const parts = partsOf(text);
  if (parts === null)
    return { ok: false, message: `A fraction after a blank can be read two ways. ${ROW_HINT[unit]}` };
  const row: Measured[] = [];
  for (const part of parts) {
    const read = readLength(part);
    if (typeof read === 'string') return { ok: false, message: `${read} ${ROW_HINT[unit]}`.trim() };
    row.push(read);
  }
  const last = row.at(-1)?.measure;
  const alone = row.slice(0, -1).every((read) => read.measure === undefined);
  if (!alone && row.some((read) => read.measure === undefined))
    return { ok: false, message: `Write the unit after every length, or once at the end. ${ROW_HINT[unit]}` };
  const mm = row.map((read) => read.value * MM_PER[read.measure ?? last ?? unit]);
  if (mm.some((one) => one > LARGEST)) return { ok: false, message: `${TOO_LARGE} ${ROW_HINT[unit]}` };
  const understood = last === undefined ? unit : unitOf(last);
  return { ok: true, mm, unit: understood };
};

/** An angle in degrees, with or without its sign: `30`, `30°`, `12,5 deg`. */
export const parseAngle = (text: string): ParsedAngle => {
  const value = readNumber(tidy(text).replace(/\s*(°|deg|degrees?)\.?$/i, ''), 'An angle');
  return typeof value === 'string'
    ? { ok: false, message: `${value} Type an angle in degrees, such as 30.`.trim() }
    : { ok: true, radians: degrees(value) };
};

/**
 * A part of one. With a percent sign, or above one, or a whole number, it is percent (`80 %`, `80`, `1`); a fraction
 * or a decimal up to one is the part itself (`0.8`, `4/5`).
 */
export const parseRatio = (text: string): ParsedRatio => {
  const [, number = '', sign] = /^(.*?)\s*(%|percent|per cent)?$/i.exec(tidy(text)) ?? [];
  const value = readNumber(number, 'This');
  if (typeof value === 'string') return { ok: false, message: `${value} Type percent, such as 80.`.trim() };
  const part = sign === undefined && value <= 1 && /[.,/]/.test(number);
  return { ok: true, ratio: part ? value : value / 100 };
};

type Measure = 'mm' | 'cm' | 'm' | 'in' | 'yd';
interface Measured {
  readonly value: number;
  readonly measure: Measure | undefined;
}

const MM_PER: Readonly<Record<Measure, number>> = {
  mm: 1,
  cm: 10,
  m: 1000,
  in: MM_PER_INCH,
  yd: MM_PER_YARD,
};
/** The unit of those who measure so. */
const unitOf = (measure: Measure): Unit => (measure === 'in' || measure === 'yd' ? 'in' : 'cm');
const LENGTH_HINT: Readonly<Record<Unit, string>> = {
  cm: 'Type a length such as 54.6 or 21 1/2 in.',
  in: 'Type a length such as 21 1/2 or 54.6 cm.',
};
const ROW_HINT: Readonly<Record<Unit, string>> = {
  cm: 'Part the lengths with semicolons: 6; 5.8; 5.',
  in: 'Part the lengths with semicolons: 2 3/8; 2 1/4; 2.',
};

/**
 * The text in plain characters: one kind of blank, hyphen and inch mark, plain digits, and fraction signs written
 * out. A fraction sign that touches the number before it is joined to it by a hyphen: `21½` is `21-1/2`.
 */
const tidy = (text: string): string =>
  text
    .replace(
      /(\p{Nd}?)([¼-¾⅐-⅟↉]|[⁰¹²³⁴-⁹]+)/gu,
      (_, before: string, sign: string) => `${before ? `${before}-` : ''}${sign}`,
    )
    .replace(/[º˚]/g, '°')
    .normalize('NFKC')
    .replace(/[‐-―−]/g, '-')
    .replace(/["“”„]|['‘’′]{2}/g, '"')
    .replace(/\s*[⁄∕/]\s*/g, '/')
    .replace(/\s+/g, ' ')
    .trim();

/** A length and the unit written after it, or the reason why there is none. The text is tidy. */
const readLength = (text: string): Measured | string => {
  const [, number = '', name] =
    /^(.*?)\s*(?:(mm|cm|m|in|inch|inches|"|yds?|yards?|(?:centi|milli)?met(?:re|er)s?)\.?)?$/i.exec(text) ??
    [];
  const measure = name === undefined ? undefined : measureOf(name.toLowerCase());
  if (measure === 'mm' && /^[1-9]\d{0,2},\d{3}$/.test(number))
    return 'A comma before three figures can be read two ways: leave it out, or write a point.';
  const value = readNumber(number, 'A length');
  return typeof value === 'string' ? value : { value, measure };
};

const measureOf = (name: string): Measure =>
  name === '"' || name.startsWith('in')
    ? 'in'
    : name.startsWith('y')
      ? 'yd'
      : name.startsWith('mm') || name.startsWith('milli')
        ? 'mm'
        : name.startsWith('c')
          ? 'cm'
          : 'm';

/** A number from nought up, whole, decimal or with a fraction, or the reason why there is none. The text is tidy. */
const readNumber = (text: string, what: string): number | string => {
  if (text === '') return '';
  if (/^-\s*[\d.,]/.test(text)) return `${what} cannot be negative.`;
  const fraction = /^(?:(\d+)(?: | ?- ?))?(\d+)\/(\d+)$/.exec(text);
  if (fraction !== null) {
    const [, whole = '0', over, under] = fraction;
    if (Number(under) === 0) return 'A fraction cannot have 0 under its line.';
    return within(Number(whole) + Number(over) / Number(under));
  }
  if (/^(\d+([.,]\d*)?|[.,]\d+)$/.test(text)) return within(Number(text.replace(',', '.')));
  if (/^[\d.,]+$/.test(text) && /\d/.test(text)) return 'A number has one point or one comma at most.';
  if (/^[\d.,/ -]*\d[ -]+\d[\d.,/ -]*$/.test(text)) return 'Write one number at a time.';
  return `“${text.length > 24 ? `${text.slice(0, 23)}…` : text}” cannot be read.`;
};

const TOO_LARGE = 'This number is too large.';
const within = (n: number): number | string => (n <= LARGEST ? n : TOO_LARGE);

/** The single lengths of a row, tidy; null where a blank before a fraction could part two lengths or join one. */
const partsOf = (text: string): readonly string[] | null => {
  const marked = tidy(text.trim().replace(/[\n\r\t]+/g, ';'));
  const split = (at: RegExp): readonly string[] =>
    marked
      .split(at)
      .map((s) => s.trim())
      .filter(Boolean);
  if (marked.includes(';')) return split(/;/);
  if (/, /.test(marked)) return split(/, /);
  if (typeof readLength(marked) !== 'string') return [marked];
  if (/(^| )\d+ \d+\//.test(marked)) return null;
  const joined = marked.replace(/ (?=[a-z"])/gi, '');
  return joined.split(' ').filter(Boolean);
};
