import type { Unit } from './units.ts';

/** A number inside a sentence, kept as a number so that the sentence can be said in either unit. */
export type Quantity =
  | { readonly mm: number; readonly exact?: boolean }
  | { readonly radians: number }
  | { readonly ratio: number }
  | { readonly count: number };

/** A sentence with quantities in it: plain data, said in the reader's unit at the last moment. */
export type Words = readonly (string | Quantity)[];

/** Builds Words from a template: words`Try ${mm(12)} or less.` */
export const words = (text: TemplateStringsArray, ...values: readonly (string | Quantity | Words)[]): Words =>
  text.flatMap((part, i) => {
    const value = values[i];
    const rest = value === undefined ? [] : Array.isArray(value) ? value : [value];
    return part === '' ? rest : [part, ...rest];
  }) as Words;

export type SayIn = Unit;
