import { decodeHeads } from './decode-head.ts';
import { isData } from './reading.ts';
import type { HeadSpec } from './spec.ts';

/** The form of the file. Raise it when the form changes; the specs in it carry their own version. */
const FILE_VERSION = 1;

/** Caps and head cards as they are handed over in a file. A cap is read when it is wanted. */
export interface ShelfFile<Cap> {
  readonly caps: readonly Cap[];
  readonly heads: readonly HeadSpec[];
}

/** The file: JSON in UTF-8, with lengths in millimetres and angles in radians. */
export const writeShelf = <Cap>({ caps, heads }: ShelfFile<Cap>): string =>
  `${JSON.stringify({ capwright: FILE_VERSION, caps, heads }, null, 1)}\n`;

/** What such a file holds, without what is damaged; null where the text is no such file, 'later' where its form is not known yet. */
export const readShelf = <Cap>(
  text: string,
  isCap: (data: unknown) => data is Cap,
): ShelfFile<Cap> | 'later' | null => {
  const data = parsed(text);
  if (!isData(data) || typeof data.capwright !== 'number' || !Array.isArray(data.caps)) return null;
  if (data.capwright > FILE_VERSION) return 'later';
  return { caps: data.caps.filter(isCap), heads: decodeHeads(data.heads) };
};

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
};
