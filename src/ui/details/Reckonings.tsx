import type { Draft } from '../../design/derive.ts';
import type { Detail } from '../../state/state.ts';
import { Arithmetic } from './Arithmetic.tsx';
import { CrownGirth, InsideGirth, TipSize } from './Girths.tsx';
import { SeamTable } from './SeamTable.tsx';

const contents = {
  inside: InsideGirth,
  crown: CrownGirth,
  tip: TipSize,
  seams: SeamTable,
  piece: Arithmetic,
} as const;

/** How one number of the tally comes about. */
export const Reckonings = ({ detail, draft }: { readonly detail: Detail; readonly draft: Draft }) => {
  const Content = contents[detail];
  return <Content draft={draft} />;
};
