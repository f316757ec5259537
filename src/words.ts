import {
  EXACT_DECIMALS,
  formatAngle,
  formatLength,
  formatRatio,
  formatThickness,
  type Unit,
} from './units.ts';

/** A number inside a sentence, kept as a number so that the sentence can be said in either unit. */
export type Quantity =
  | { readonly mm: number; readonly exact?: boolean }
  | { readonly thickness: number }
  | { readonly radians: number }
  | { readonly ratio: number }
  | { readonly count: number };

/** A sentence with quantities in it: plain data, said in the reader's unit at the last moment. */
export type Words = readonly (string | Quantity)[];

/** A length in mm, said as people measure: "54.6 cm", "21 1/2 in". */
export const mm = (n: number): Quantity => ({ mm: n });
/** A length in mm, said with the decimals that arithmetic needs: "10.51 cm", "4.138 in". */
export const exactMm = (n: number): Quantity => ({ mm: n, exact: true });
/** A thickness in mm, said in millimetres or thousandths of an inch: "0.8 mm", "0.031 in". */
export const thickness = (n: number): Quantity => ({ thickness: n });
/** An angle in radians, said in degrees. */
export const radians = (n: number): Quantity => ({ radians: n });
/** A part of one, said in percent. */
export const ratio = (n: number): Quantity => ({ ratio: n });
/** A plain number, said with three decimals at most. */
export const count = (n: number): Quantity => ({ count: n });

/** Builds Words from a template: words`Try ${mm(12)} or less.` */
export const words = (
  text: TemplateStringsArray,
  ...values: readonly (string | Quantity | Words)[]
): Words => {
  const said: (string | Quantity)[] = [];
  for (const [i, part] of text.entries()) {
    if (part !== '') said.push(part);
    const value = values[i];
    if (value !== undefined) said.push(...(isWords(value) ? value : [value]));
  }
  return said;
};

const isWords = (value: string | Quantity | Words): value is Words => Array.isArray(value);

/** The sentence as plain text in the reader's unit. */
export const say = (sentence: Words, unit: Unit): string =>
  sentence.map((part) => (typeof part === 'string' ? part : sayQuantity(part, unit))).join('');

const sayQuantity = (quantity: Quantity, unit: Unit): string => {
  if ('mm' in quantity)
    return formatLength(quantity.mm, unit, quantity.exact ? { decimals: EXACT_DECIMALS[unit] } : {});
  if ('thickness' in quantity) return formatThickness(quantity.thickness, unit);
  if ('radians' in quantity) return formatAngle(quantity.radians);
  if ('ratio' in quantity) return formatRatio(quantity.ratio);
  return Number.isFinite(quantity.count) ? String(+quantity.count.toFixed(3)).replace('-', '−') : '–';
};
