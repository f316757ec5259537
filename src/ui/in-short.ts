import { isLined } from '../caps/is-lined.ts';
import type { CapDraft, Fact } from '../caps/style.ts';
import type { Draft } from '../design/draft.ts';

/** The few things said of a cap that follow every move of a slider. */
export interface InShort extends Pick<CapDraft, 'finishedGirth' | 'insert'> {
  readonly facts: readonly Pick<Fact, 'id' | 'name' | 'figure'>[];
  /** How many seams there are, and how many of them meet. */
  readonly seams: number;
  readonly meeting: number;
  readonly lined: boolean;
}

export const inShort = ({ finishedGirth, insert, facts, seams, pattern }: Draft): InShort => ({
  finishedGirth,
  insert,
  facts: facts.map(({ id, name, figure }) => ({ id, name, figure })),
  seams: seams.length,
  meeting: seams.filter(({ meets }) => meets).length,
  lined: isLined(pattern),
});
