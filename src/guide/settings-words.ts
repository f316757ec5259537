import { formatAllowance, formatLength, MM_PER_INCH, type Unit } from '../units.ts';
import { pressedHow } from './care.ts';
import { plainName } from './said.ts';
import type { Step } from './step.ts';
import type { Work } from './work.ts';

/** A setting as a short line: what it is of, and what it is. */
export interface SettingLine {
  readonly name: string;
  readonly value: string;
}

/** Stitches by the numbers of ISO 4915, seams by the letters of ASTM D6193 and the classes of ISO 4916. */
const STITCHES = { 301: 'lockstitch 301 (ISO 4915)', 200: 'hand stitch, class 200 (ISO 4915)' } as const;
const SEAMS = {
  SS: 'superimposed seam SS, class 1 (ISO 4916)',
  LS: 'lapped seam LS, class 2 (ISO 4916)',
  BS: 'bound seam BS, class 3 (ISO 4916)',
} as const;

/** How machine and iron are set for a step. Machines count stitches in mm, also where lengths are in inches. */
export const settingLines = (work: Work, { settings, pieces }: Step, unit: Unit): readonly SettingLine[] => {
  const how = pressedHow(work, pieces);
  const { needle, stitch, allowance, press, topstitch, trade } = settings;
  const lines: (SettingLine | false)[] = [
    needle !== undefined && {
      name: 'Needle',
      value: `${needle.size}${needle.point === 'jeans' ? ', jeans point' : ''}`,
    },
    stitch !== undefined && { name: 'Stitch', value: stitchWords(stitch, unit) },
    allowance !== undefined && { name: 'Allowance', value: formatAllowance(allowance, unit) },
    topstitch !== undefined && {
      name: 'Topstitch',
      value: `${formatLength(topstitch, unit)} away`,
    },
    press !== undefined && {
      name: 'Press',
      value: `${press === 'open' ? 'open' : `to the ${plainName(work, press.towards)}`}${how === null ? '' : `, ${how}`}`,
    },
    trade !== undefined && {
      name: 'In the trade',
      value: [STITCHES[trade.stitch], ...(trade.seam ? [SEAMS[trade.seam]] : [])].join(', '),
    },
  ];
  return lines.filter((line) => line !== false);
};

/** "2.5 mm", and for those who count, "2.5 mm, 10 to the inch". */
const stitchWords = (mm: number, unit: Unit): string =>
  unit === 'cm' ? `${mm} mm` : `${mm} mm, ${Math.round(MM_PER_INCH / mm)} to the inch`;
