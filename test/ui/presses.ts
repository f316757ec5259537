import type { Press } from '../../src/ui/with-command-key.ts';

/** A press of a key, alone or with others. */
export const press = (key: string, more: Partial<Press> = {}): Press => ({
  key,
  shiftKey: false,
  ctrlKey: false,
  metaKey: false,
  altKey: false,
  ...more,
});
