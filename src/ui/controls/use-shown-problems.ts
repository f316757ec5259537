import type { Problem } from '../../pattern/problem.ts';
import { type FieldId, readField } from '../../state/field.ts';
import { useStudio } from '../../state/studio.ts';
import { stillStands } from '../../state/typed.ts';
import { useProblems } from '../../state/use-problems.ts';
import { useRested } from '../use-rested.ts';

/** Half a figure is no wish yet: while a field is typed in, its problems wait for this rest, ms. */
const REST = 500;

/** A field's problems as they are shown: at once under a slider, after a rest under a figure being typed. */
export const useShownProblems = (field: FieldId): readonly Problem[] => {
  const problems = useProblems(field);
  const typing = useStudio(
    (s) => s.moving?.field === field && stillStands(s.typed[field], readField(s.wish, field), s.wish.unit),
  );
  return useRested(problems, typing ? REST : 0);
};
