import { type Press, withCommandKey } from '../with-command-key.ts';

/** What a key does to the table, or null. */
export type Stroke =
  | { readonly kind: 'zoom'; readonly factor: number }
  | { readonly kind: 'pull'; readonly right: number; readonly down: number }
  | { readonly kind: 'fit' }
  | { readonly kind: 'let go' };

const CLOSER = 1.25;
const STEP = 48;

export const strokeOf = (event: Press): Stroke | null => {
  if (withCommandKey(event)) return null;
  switch (event.key) {
    case '+':
    case '=':
      return { kind: 'zoom', factor: CLOSER };
    case '-':
      return { kind: 'zoom', factor: 1 / CLOSER };
    case '0':
      return { kind: 'fit' };
    // An arrow looks that way: the table slides the other.
    case 'ArrowLeft':
      return { kind: 'pull', right: STEP, down: 0 };
    case 'ArrowRight':
      return { kind: 'pull', right: -STEP, down: 0 };
    case 'ArrowUp':
      return { kind: 'pull', right: 0, down: STEP };
    case 'ArrowDown':
      return { kind: 'pull', right: 0, down: -STEP };
    case 'Escape':
      return { kind: 'let go' };
    default:
      return null;
  }
};
