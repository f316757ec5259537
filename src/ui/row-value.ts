import type { Parameter } from '../caps/parameter.ts';
import { formatAngle, formatLength, formatRatio, type Unit } from '../units.ts';

/** A measure of a style's table as people write it. */
export const rowValue = ({ kind }: Pick<Parameter, 'kind'>, value: number, unit: Unit): string => {
  switch (kind) {
    case 'angle':
      return formatAngle(value);
    case 'ratio':
      return formatRatio(value);
    case 'count':
      return String(value);
    default:
      return formatLength(value, unit);
  }
};
