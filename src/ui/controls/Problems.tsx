import { useShallow } from 'zustand/react/shallow';
import type { Problem } from '../../pattern/problem.ts';
import { put } from '../../state/actions.ts';
import { derived } from '../../state/derived.ts';
import type { FieldId } from '../../state/field.ts';
import { useStudio } from '../../state/studio.ts';
import { Figures, Said } from '../Said.tsx';
import type { Notation } from './notation.ts';

const none: readonly Problem[] = [];

export const useProblems = (field: FieldId): readonly Problem[] =>
  useStudio(
    useShallow((s) => {
      const { problems } = derived(s.wish);
      return problems.length === 0 ? none : problems.filter((problem) => problem.field === field);
    }),
  );

interface Props {
  readonly field: FieldId;
  readonly notation: Notation;
  /** Why the typed text could not be read. */
  readonly message?: string | null;
}

/** What is wrong with a field, under its control, with the nearest value that works as a button. */
export const Problems = ({ field, notation, message = null }: Props) => {
  const problems = useProblems(field);
  const unit = useStudio((s) => s.wish.unit);
  return (
    <div className="problems" aria-live="polite">
      {message !== null && (
        <p className="problem">
          <Figures text={message} />
        </p>
      )}
      {message === null &&
        problems.map((problem) => (
          <p className="problem" key={JSON.stringify(problem.message)}>
            <Said words={problem.message} />{' '}
            {problem.nearest !== undefined && (
              <button type="button" onClick={() => put(field, problem.nearest ?? null)}>
                Use <Figures text={notation.write(problem.nearest, unit)} />
              </button>
            )}
          </p>
        ))}
    </div>
  );
};
