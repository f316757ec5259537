import type { LineRole, TextRole, Tone } from './drawing.ts';

/** Millimetres per printer's point. */
const POINT = 25.4 / 72;

/** Nothing on paper is set smaller (mm to the em): 8 point, common practice for home patterns. */
export const SMALLEST_TEXT = 8 * POINT;

/** From one baseline to the next, in ems. */
export const LEADING = 1.22;

export interface LineStyle {
  /** Width of the line on paper, mm. */
  readonly weight: number;
  /** Lengths of dash and gap in turn, mm; empty for a solid line. */
  readonly dash: readonly number[];
  readonly tone: Tone;
}

/**
 * One table for screen and paper: each role is told from its neighbours by weight and dash, so that a black and
 * white print loses nothing. Cut 0.5 to 0.75 mm solid, stitch 0.3 to 0.4 dashed, grain 0.4: common practice.
 */
export const lineStyles: Readonly<Record<LineRole, LineStyle>> = {
  cut: { weight: 0.6, dash: [], tone: 'ink' },
  stitch: { weight: 0.35, dash: [3, 1.6], tone: 'chalk' },
  row: { weight: 0.3, dash: [1.7, 0.7, 1.7, 2.1], tone: 'chalk' },
  fold: { weight: 0.5, dash: [9, 1.8, 1.2, 1.8], tone: 'ink' },
  grain: { weight: 0.4, dash: [], tone: 'ink' },
  notch: { weight: 0.25, dash: [], tone: 'ink' },
  centre: { weight: 0.15, dash: [12, 1.6], tone: 'ink' },
  mark: { weight: 0.3, dash: [], tone: 'ink' },
  sew: { weight: 0.7, dash: [2, 1], tone: 'madder' },
  bare: { weight: 0, dash: [], tone: 'ink' },
  dimension: { weight: 0.12, dash: [], tone: 'ink' },
  sheet: { weight: 0.3, dash: [1, 1], tone: 'ink' },
  join: { weight: 0.35, dash: [], tone: 'ink' },
};

export interface TextStyle {
  /** The size a text of this role has where there is room, mm to the em. */
  readonly size: number;
  readonly bold: boolean;
  readonly tone: Tone;
}

export const textStyles: Readonly<Record<TextRole, TextStyle>> = {
  title: { size: 14 * POINT, bold: true, tone: 'ink' },
  label: { size: 10 * POINT, bold: false, tone: 'ink' },
  dimension: { size: 9 * POINT, bold: false, tone: 'ink' },
  sheet: { size: 9 * POINT, bold: true, tone: 'ink' },
  note: { size: 9 * POINT, bold: false, tone: 'ink' },
};
