import type { Allowances } from '../../../pattern/pattern.ts';
import type { OwnAllowance } from './parameters.ts';

type Widths = { readonly allowance: number } & { readonly [K in OwnAllowance]?: number | null };

/** The width for each kind of seam, mm: its own where it has one, otherwise the general one. */
export const allowancesOf = (values: Widths): Allowances => {
  const width = (own: OwnAllowance): number => values[own] ?? values.allowance;
  return {
    crown: width('crownAllowance'),
    gore: width('goreAllowance'),
    side: width('sideAllowance'),
    band: width('bandAllowance'),
    lower: width('lowerAllowance'),
    visorEdge: width('visorEdgeAllowance'),
    brimEdge: width('brimEdgeAllowance'),
    strapEdge: width('strapAllowance'),
    hem: width('hemAllowance'),
    none: 0,
  };
};
