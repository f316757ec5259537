import type { Parameter } from '../caps/parameter.ts';
import { formatAngle, formatLength, formatRatio, type Unit } from '../units.ts';

/** A measure of a style's table as people write it; a row that the style does not have is taken for a length. */
export const rowValue = (row: Pick<Parameter, 'kind'> | undefined, value: number, unit: Unit): string => {
  switch (row?.kind) {
    case 'angle':
      return formatAngle(value);
    case 'ratio':
      return formatRatio(value);
    default:
      return formatLength(value, unit);
  }
};
