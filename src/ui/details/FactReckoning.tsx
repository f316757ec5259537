import type { Fact } from '../../caps/style.ts';
import { Reckoning } from './Reckoning.tsx';

/** How one fact of the draft comes about. */
export const FactReckoning = ({ fact }: { readonly fact: Fact }) => (
  <dl>
    {fact.reckoning.map((figure) => (
      <Reckoning key={figure.name} {...figure} />
    ))}
  </dl>
);
