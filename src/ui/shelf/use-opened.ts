import { useEffect, useState } from 'react';
import { type Opened, openShelved } from '../../state/shelf.ts';
import type { Shelved } from '../../state/shelved.ts';

/** A cap of the shelf once it can be drafted; null until then, or where its style cannot be fetched. */
export const useOpened = (cap: Shelved): Opened | null => {
  const [opened, setOpened] = useState<{ readonly cap: Shelved; readonly as: Opened } | null>(null);
  useEffect(() => {
    let wanted = true;
    openShelved(cap).then(
      (as) => wanted && setOpened({ cap, as }),
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, [cap]);
  return opened?.cap === cap ? opened.as : null;
};
