import type { SheetSet } from '../sheet.ts';
import { papers } from '../sheet-size.ts';

/** What a PDF says of itself. */
export interface DocumentFacts {
  readonly title: string;
  readonly subject: string;
  readonly keywords: string;
  /** As PDF writes dates; the day of the heading, so that the same pattern gives the same file. */
  readonly created: string;
  /** 32 hexadecimal figures, the same for the same content. */
  readonly id: string;
}

export const documentFacts = ({ heading, what, paper, sheets, pieces }: SheetSet): DocumentFacts => {
  const { cap, wearer, date } = heading;
  // A lay and a booklet are on plain sheets and not drawn true to scale.
  const isPattern = what === 'sewing pattern';
  const named = what.charAt(0).toUpperCase() + what.slice(1);
  const whose = wearer === '' ? '' : ` for ${wearer}`;
  return {
    title: isPattern ? `${cap}, pattern for ${papers[paper.paper].label}` : `${cap}, ${what}`,
    subject: `${named}${whose}${isPattern ? ', true to scale' : ''}. Drawn with Capwright.`,
    keywords: isPattern ? `${what}, true scale` : what,
    created: pdfDate(date),
    id: digest(JSON.stringify([heading, paper, sheets, pieces])),
  };
};

/** Midnight of a day given as 2026-11-25; of anything else, the first day that PDF software is sure to know. */
const pdfDate = (iso: string): string => {
  const [, year, month, day] = /^(20[0-2]\d|203[0-7])-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])/.exec(iso) ?? [];
  return `D:${year === undefined ? '20000101' : `${year}${month}${day}`}000000+00'00'`;
};

/** Four 32-bit FNV-1a hashes with different starts: a name for the content, not a secret. */
const digest = (text: string): string =>
  [0x811c9dc5, 0x1b873593, 0xcc9e2d51, 0x9e3779b9]
    .map((start) => {
      let hash = start;
      for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
      return (hash >>> 0).toString(16).padStart(8, '0');
    })
    .join('');
