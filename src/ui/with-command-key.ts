/** What is asked of a press of a key. */
export type Press = Pick<KeyboardEvent, 'key' | 'shiftKey' | 'ctrlKey' | 'metaKey' | 'altKey'>;

/** Whether a key is pressed with one that makes it the browser's own: zoom, history, reload. */
export const withCommandKey = ({ ctrlKey, metaKey, altKey }: Press): boolean => ctrlKey || metaKey || altKey;
