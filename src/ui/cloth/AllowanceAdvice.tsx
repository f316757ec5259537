import { allowanceAdvice } from '../../cloth/allowance-advice.ts';
import { put } from '../../state/actions.ts';
import { readField } from '../../state/field.ts';
import { useStudio } from '../../state/studio.ts';
import { formatLength } from '../../units.ts';
import { Going } from '../Going.tsx';
import { Figures, Said } from '../Said.tsx';

/** What this cloth would like for its seams: said, and applied only if it is asked for. */
export const AllowanceAdvice = () => {
  const outer = useStudio((s) => s.wish.cloths.outer);
  const allowance = useStudio((s) => Number(readField(s.wish, 'cap.allowance')));
  const unit = useStudio((s) => s.wish.unit);
  const advice = allowanceAdvice(outer, allowance);
  if (advice === null) return null;
  return (
    <p className="remark" aria-live="polite">
      <Said words={advice.message} />{' '}
      <Going onPress={() => put('cap.allowance', advice.allowance)}>
        Use <Figures text={formatLength(advice.allowance, unit)} />
      </Going>
    </p>
  );
};
