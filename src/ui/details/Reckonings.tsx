import type { Draft } from '../../design/draft.ts';
import type { Detail } from '../../state/state.ts';
import { Arithmetic } from './Arithmetic.tsx';
import { FactReckoning } from './FactReckoning.tsx';
import { InsideGirth } from './InsideGirth.tsx';
import { SeamTable } from './SeamTable.tsx';

const contents = { inside: InsideGirth, seams: SeamTable, piece: Arithmetic } as const;

/** How one number of the tally comes about. */
export const Reckonings = ({ detail, draft }: { readonly detail: Detail; readonly draft: Draft }) => {
  const Content = contents[detail as keyof typeof contents];
  if (Content) return <Content draft={draft} />;
  const fact = draft.facts.find(({ id }) => detail === `fact.${id}`);
  return fact ? <FactReckoning fact={fact} /> : null;
};
