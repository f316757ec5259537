import { inches } from '../../../units.ts';
import type { FollowingParameter, LengthParameter } from '../../parameter.ts';
import { visored } from '../visor/parameters.ts';

/** The width for all seams that have none of their own. */
const generalAllowance: LengthParameter = {
  kind: 'length',
  label: 'Seam allowance',
  help: 'Added outside every stitch line, unless a seam below has its own.',
  group: 'seams',
  min: 3,
  max: 20,
  step: 1,
  inchStep: 1 / 8,
  default: inches(1 / 4),
  usual: [6, 10],
};

const following = (label: string, help: string): FollowingParameter => ({
  kind: 'following',
  label,
  help,
  group: 'seams',
  follows: 'allowance',
  min: 3,
  max: 20,
  default: null,
});

/** A width of its own for each kind of seam, or none to follow the general one. */
const ownAllowances = {
  crownAllowance: following('Top seam allowance', 'Where the top meets the side band.'),
  goreAllowance: following('Long seam allowance', 'The long seams between the pieces of the crown.'),
  sideAllowance: following(
    'Side seam allowance',
    'The short seams that close each ring: side band, band, brim and lining.',
  ),
  bandAllowance: following('Band seam allowance', 'Where the crown meets the band.'),
  lowerAllowance: following('Lower edge allowance', 'Where crown or band, visor or brim, and lining meet.'),
  visorEdgeAllowance: {
    ...following('Visor edge allowance', 'The enclosed seam round the visor’s outer edge.'),
    when: visored,
  },
  brimEdgeAllowance: following('Brim edge allowance', 'The enclosed seam round the brim’s outer edge.'),
  strapAllowance: {
    ...following('Strap allowance', 'The enclosed seam round the strap.'),
    when: { strap: true },
  },
  hemAllowance: following('Hem allowance', 'What is turned in along an edge that is not sewn to another.'),
} as const;

export type OwnAllowance = keyof typeof ownAllowances;

/** The rows for the kinds of seam that a style has. */
export const allowanceParameters = <K extends OwnAllowance>(
  ...kinds: readonly K[]
): { readonly allowance: LengthParameter } & { readonly [P in K]: FollowingParameter } => ({
  allowance: generalAllowance,
  ...(Object.fromEntries(kinds.map((kind): [K, FollowingParameter] => [kind, ownAllowances[kind]])) as {
    readonly [P in K]: FollowingParameter;
  }),
});
