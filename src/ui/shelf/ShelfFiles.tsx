import { type ChangeEvent, useId, useState } from 'react';
import { isLater } from '../../design/decode.ts';
import { readShelf } from '../../design/shelf-file.ts';
import { addHeads } from '../../state/heads.ts';
import { addToShelf, onShelf } from '../../state/shelf.ts';
import { type FiledCap, isSavedCap } from '../../state/shelved.ts';
import { useStudio } from '../../state/studio.ts';
import { saveCaps } from './save-caps.ts';

/** The shelf and the head cards as a file, to keep elsewhere or to take to another device; and such a file brought back. */
export const ShelfFiles = () => {
  const id = useId();
  const [said, say] = useState('');
  const bring = async ({ target }: ChangeEvent<HTMLInputElement>) => {
    const file = target.files?.[0];
    if (!file) return;
    say(await added(await file.text()));
    // The same file can be brought again.
    target.value = '';
  };
  return (
    <details>
      <summary>Keep a copy elsewhere</summary>
      <p className="help">
        A browser may forget what it keeps. A file of all caps and head cards can be kept safe, or taken to
        another device.
      </p>
      <p className="actions">
        <button type="button" onClick={saveAll}>
          Save all as a file
        </button>
      </p>
      <div className="control">
        <label htmlFor={id}>Add from a file</label>
        <input type="file" id={id} accept="application/json,.json" onChange={(event) => void bring(event)} />
      </div>
      <p className="remark" aria-live="polite">
        {said}
      </p>
    </details>
  );
};

const saveAll = (): void => {
  const { shelf, heads } = useStudio.getState();
  saveCaps([...shelf, onShelf()], heads, 'Caps and heads');
};

/** Adds what a file holds, and says what that was. */
const added = async (text: string): Promise<string> => {
  const file = readShelf<FiledCap>(text, isSavedCap);
  if (file === null) return 'This file holds no caps of ours. Choose one that was saved here.';
  if (file === 'later')
    return 'This file was saved by a later Capwright: nothing was added. Reload the page first.';
  const readable = file.caps.filter(({ wish }) => !isLater(wish));
  const later = file.caps.length - readable.length;
  const caps = await addToShelf(readable);
  const heads = addHeads(file.heads);
  return [
    `Added ${count(caps.added, 'cap')} and ${count(heads.added, 'head card')}.`,
    caps.known > 0 ? `Left out, since the shelf has the same: ${count(caps.known, 'cap')}.` : '',
    later > 0 ? `Left out, since a later Capwright saved them: ${count(later, 'cap')}.` : '',
    caps.roomless > 0 ? `The shelf is full: ${count(caps.roomless, 'cap')} found no room.` : '',
    heads.left > 0
      ? `There are as many head cards as can be kept: ${count(heads.left, 'card')} found no room.`
      : '',
    heads.added + heads.left < file.heads.length
      ? 'Cards whose name was there already were left as they are.'
      : '',
  ]
    .filter((part) => part !== '')
    .join(' ');
};

const count = (n: number, thing: string): string => `${n} ${thing}${n === 1 ? '' : 's'}`;
