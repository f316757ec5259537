import { useShallow } from 'zustand/react/shallow';
import type { Problem } from '../pattern/problem.ts';
import { judged } from './derived.ts';
import type { FieldId } from './field.ts';
import { useStudio } from './studio.ts';

const none: readonly Problem[] = [];

/** The field of what stands first in the way of the wish, or null. */
export const useFirstInTheWay = (): FieldId | null =>
  useStudio((s) => (judged(s.wish).problems[0]?.field ?? null) as FieldId | null);

/** Whether anything stands in the way among some fields. */
export const useInTheWay = (fields: readonly FieldId[]): boolean =>
  useStudio((s) => judged(s.wish).problems.some(({ field }) => fields.some((one) => one === field)));

/** What stands in the way of the wish, for one field. */
export const useProblems = (field: FieldId): readonly Problem[] =>
  useStudio(
    useShallow((s) => {
      const { problems } = judged(s.wish);
      return problems.length === 0 ? none : problems.filter((problem) => problem.field === field);
    }),
  );
