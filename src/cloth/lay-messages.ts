import type { Layout } from '../nesting/layout.ts';
import type { Task } from '../nesting/task.ts';

/** What the laying worker is asked for. It answers at once, and then betters its answer for so long, ms; 0 for the first answer alone. */
export interface LayOrder {
  readonly task: Task;
  readonly seed: number;
  readonly time: number;
}

export type LayAnswer =
  | { readonly kind: 'layout'; readonly layout: Layout }
  /** Part of the time that has gone. */
  | { readonly kind: 'progress'; readonly done: number }
  | { readonly kind: 'finished' }
  | { readonly kind: 'failed'; readonly message: string };
