import { useStudio } from '../../state/studio.ts';
import { mm, radians, words } from '../../words.ts';
import type { InShort } from '../in-short.ts';
import { Said } from '../Said.tsx';
import { useInShort } from '../use-in-short.ts';

/** What the app can say of a bought visor insert: how it meets the band it is sewn to, and how it will slope. */
export const InsertFit = () => {
  const fit = useInShort()?.insert ?? null;
  const wished = useStudio((s) => s.wish.cap.values.visorSource === 'insert');
  return <div aria-live="polite">{fit !== null && wished && <Fit fit={fit} />}</div>;
};

const Fit = ({ fit }: { readonly fit: NonNullable<InShort['insert']> }) => {
  const apart = Math.abs(fit.difference);
  return (
    <div className="said">
      <p>
        <Said
          words={words`The insert’s inner edge is ${mm(fit.innerEdge)} long, ${mm(apart)} ${fit.difference < 0 ? 'shorter' : 'longer'} than the ${mm(fit.stretch)} of band that it will meet.`}
        />
      </p>
      <p>
        <Said
          words={
            fit.drop === null
              ? words`It is bowed more than the front of this head, so it will stand away from it.`
              : words`On this head it will slope about ${radians(fit.drop)} below level.`
          }
        />
      </p>
    </div>
  );
};
