import type { SheetSet } from '../sheet.ts';

/** What the worker is told. */
export interface PdfOrder {
  readonly set: SheetSet;
}

/** What it answers: how far it is, and at the end the file or what went wrong. */
export type PdfAnswer =
  | { readonly kind: 'drawn'; readonly drawn: number; readonly of: number }
  | { readonly kind: 'done'; readonly bytes: Uint8Array }
  | { readonly kind: 'failed'; readonly message: string };
