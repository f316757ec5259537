import { inches } from '../units.ts';
import type { PaperName, PaperSpec } from './paper.ts';

/** A stack of equal sheets, a roll as long as the pattern needs, or one page exactly as large as the pattern. */
export type PaperFormat =
  | { readonly kind: 'sheets'; readonly label: string; readonly width: number; readonly height: number }
  | { readonly kind: 'roll'; readonly label: string; readonly width: number }
  | { readonly kind: 'one-page'; readonly label: string };

const sheets = (label: string, width: number, height: number): PaperFormat => ({
  kind: 'sheets',
  label,
  width,
  height,
});
const roll = (width: number, wide: string): PaperFormat => ({
  kind: 'roll',
  label: `Roll, ${width} mm (${wide})`,
  width,
});

/** Every paper, mm, upright: ISO 216 (A4, A3), ANSI/ASME Y14.1 (Letter, Tabloid), Legal, and rolls of the trade. */
export const papers: Readonly<Record<PaperName, PaperFormat>> = {
  a4: sheets('A4', 210, 297),
  letter: sheets('Letter', inches(8.5), inches(11)),
  a3: sheets('A3', 297, 420),
  legal: sheets('Legal', inches(8.5), inches(14)),
  tabloid: sheets('Tabloid', inches(11), inches(17)),
  'roll-594': roll(594, 'A1'),
  'roll-610': roll(610, '24 in'),
  'roll-841': roll(841, 'A0'),
  'roll-914': roll(914, '36 in'),
  'roll-1067': roll(1067, '42 in'),
  'one-page': { kind: 'one-page', label: 'One page, as large as the pattern' },
};

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** The page as it leaves the printer, mm; endless where the pattern decides. */
export const pageSize = ({ paper, orientation }: Pick<PaperSpec, 'paper' | 'orientation'>): Size => {
  const format = papers[paper];
  if (format.kind === 'one-page') return { width: Infinity, height: Infinity };
  if (format.kind === 'roll') return { width: format.width, height: Infinity };
  const { width, height } = format;
  return orientation === 'portrait' ? { width, height } : { width: height, height: width };
};

/** The page inside its margins, mm of paper. */
export const printable = (paper: Pick<PaperSpec, 'paper' | 'orientation' | 'margin'>): Size => {
  const { width, height } = pageSize(paper);
  return { width: width - 2 * paper.margin, height: height - 2 * paper.margin };
};

/** How much larger than true the printer must be told to draw, across and up, so that the print comes out true. */
export const correction = (
  paper: Pick<PaperSpec, 'measuredAcross' | 'measuredDown'>,
): { readonly across: number; readonly up: number } => ({
  across: 100 / paper.measuredAcross,
  up: 100 / paper.measuredDown,
});
