import { forAChild } from '../../guide/for-a-child.ts';
import type { Guide } from '../../guide/guide.ts';
import type { Thing } from '../../guide/step.ts';
import { Said } from '../Said.tsx';

/** Tools and notions, to be laid out before the work. */
export const Needs = ({ tools, notions }: Pick<Guide, 'tools' | 'notions'>) => (
  <details className="needs">
    <summary>What you need</summary>
    <h4>Notions</h4>
    <Things all={notions} />
    <h4>Tools</h4>
    <Things all={tools} />
  </details>
);

const Things = ({ all }: { readonly all: readonly Thing[] }) => (
  <ul>
    {all.map(({ name, words }) => (
      <li key={name}>
        {name}
        {words && (
          <>
            : <Said words={words} />
          </>
        )}
      </li>
    ))}
  </ul>
);

/** Open at once where the cap is a child's. */
export const ForAChild = ({ open }: { readonly open: boolean }) => (
  <details className="needs" open={open}>
    <summary>For a child’s cap</summary>
    {forAChild.map((sentence, i) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: sentences have no other name than their place.
      <p key={i}>
        <Said words={sentence} />
      </p>
    ))}
  </details>
);
