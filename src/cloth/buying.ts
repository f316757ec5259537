import { inches, type Unit } from '../units.ts';

/** Cloth is sold in steps: 10 cm, or an eighth of a yard. */
const STEP: Readonly<Record<Unit, number>> = { cm: 100, in: inches(4.5) };

/** A hair that no shop measures, mm. */
const HAIR = 0.5;

/** What to buy of a cloth for a length that is needed, mm: up to the next 10 cm or eighth of a yard. */
export const toBuy = (length: number, unit: Unit): number =>
  Math.ceil((length - HAIR) / STEP[unit]) * STEP[unit];

/** Usual widths of bolts, mm: what a shop has. Common practice; the inch widths are those that shops name. */
export const commonWidths: Readonly<Record<Unit, readonly number[]>> = {
  cm: [900, 1120, 1400, 1500],
  in: [36, 44, 54, 60].map(inches),
};

/** Yards as they are bought, in eighths: "3/8 yd", "1 1/4 yd"; metres with one decimal: "0.4 m". */
export const lengthBought = (length: number, unit: Unit): string => {
  if (unit === 'cm') return `${(length / 1000).toFixed(1)} m`;
  const eighths = Math.round(length / STEP.in);
  const [whole, rest] = [Math.floor(eighths / 8), eighths % 8];
  const divisor = rest % 4 === 0 ? 4 : rest % 2 === 0 ? 2 : 1;
  const fraction = rest === 0 ? '' : `${rest / divisor}/${8 / divisor}`;
  return `${[whole > 0 || fraction === '' ? whole : '', fraction].filter((part) => part !== '').join(' ')} yd`;
};
