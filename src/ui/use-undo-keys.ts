import { useEffect } from 'react';
import { redo, undo } from '../state/actions.ts';

/**
 * Undo and redo from the keyboard, wherever the focus is. A text being typed keeps its own undo until the field is
 * left or Enter is pressed: then the whole text is one step of ours.
 */
export const useUndoKeys = (): void => {
  useEffect(() => {
    let typing: EventTarget | null = null;
    const onInput = ({ target }: Event) => {
      if (target instanceof HTMLInputElement && ['text', 'number'].includes(target.type)) typing = target;
    };
    const onFocusOut = () => {
      typing = null;
    };
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.key === 'Enter') typing = null;
      const step = stepOf(event);
      if (step === null || (typing !== null && typing === event.target)) return;
      event.preventDefault();
      step();
    };
    document.addEventListener('input', onInput);
    document.addEventListener('focusout', onFocusOut);
    document.addEventListener('keydown', onKeyDown);
    return () => {
      document.removeEventListener('input', onInput);
      document.removeEventListener('focusout', onFocusOut);
      document.removeEventListener('keydown', onKeyDown);
    };
  }, []);
};

const stepOf = ({ key, ctrlKey, metaKey, shiftKey, altKey }: KeyboardEvent): (() => void) | null => {
  if (!(ctrlKey || metaKey) || altKey) return null;
  const letter = key.toLowerCase();
  if (letter === 'z') return shiftKey ? redo : undo;
  return letter === 'y' && !shiftKey ? redo : null;
};
