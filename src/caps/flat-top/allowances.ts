import type { Allowances } from '../../pattern/pattern.ts';
import type { FlatTopValues } from './parameters.ts';

/** The width for each kind of seam: its own where it has one, otherwise the general one. */
export const allowancesOf = (values: FlatTopValues): Allowances => ({
  crown: values.crownAllowance ?? values.allowance,
  side: values.sideAllowance ?? values.allowance,
  band: values.bandAllowance ?? values.allowance,
  lower: values.lowerAllowance ?? values.allowance,
  visorEdge: values.visorEdgeAllowance ?? values.allowance,
  strapEdge: values.strapAllowance ?? values.allowance,
  none: 0,
});
