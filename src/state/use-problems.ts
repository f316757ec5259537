import { useShallow } from 'zustand/react/shallow';
import type { Problem } from '../pattern/problem.ts';
import { derived } from './derived.ts';
import type { FieldId } from './field.ts';
import { useStudio } from './studio.ts';

const none: readonly Problem[] = [];

/** What stands in the way of the wish, for one field. */
export const useProblems = (field: FieldId): readonly Problem[] =>
  useStudio(
    useShallow((s) => {
      const { problems } = derived(s.wish);
      return problems.length === 0 ? none : problems.filter((problem) => problem.field === field);
    }),
  );
