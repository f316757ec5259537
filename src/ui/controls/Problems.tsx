import type { Problem } from '../../pattern/problem.ts';
import { put } from '../../state/actions.ts';
import type { FieldId } from '../../state/field.ts';
import { useStudio } from '../../state/studio.ts';
import { focusField } from '../focus.ts';
import { Figures, Said } from '../Said.tsx';
import type { Notation } from './notation.ts';
import { useShownProblems } from './use-shown-problems.ts';
import { useUnread } from './use-unread.ts';

interface Props {
  readonly field: FieldId;
  readonly notation: Notation;
  /** Problems that do not come from the draft: the paper's. */
  readonly others?: readonly Problem[];
}

/** What is wrong with a field, under its control, with the nearest value that works as a button. */
export const Problems = ({ field, notation, others = [] }: Props) => {
  const unread = useUnread(field, notation);
  const problems = [...useShownProblems(field), ...others];
  const unit = useStudio((s) => s.wish.unit);
  return (
    <div className="problems" aria-live="polite">
      {unread !== null ? (
        <p className="problem">
          <Figures text={unread} />
        </p>
      ) : (
        problems.map((problem) => (
          <p className="problem" key={problem.field + problem.message.length}>
            <Said words={problem.message} />{' '}
            {problem.nearest !== undefined && (
              <button
                type="button"
                onClick={() => {
                  put(field, problem.nearest ?? null);
                  focusField(field);
                }}
              >
                Use <Figures text={notation.write(problem.nearest, unit)} />
              </button>
            )}
          </p>
        ))
      )}
    </div>
  );
};
