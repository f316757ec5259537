import { calledName } from '../design/called-name.ts';

/** File systems take 255 bytes: the rest is for what is added to a name. */
const MOST_BYTES = 200;

/** Names of devices, which one system takes for no file whatever ending they have. */
const DEVICE = /^(con|prn|aux|nul|(?:com|lpt)[0-9¹²³])(?=\.|$)/i;

/** A cap's name as every file system takes it. */
export const fileName = (name: string): string => {
  const plain = name
    .replace(/[\\/:*?"<>|\p{Cc}]/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim()
    .replace(DEVICE, '$1 cap');
  return calledName(cut(plain));
};

/** As many whole characters as there is room for. */
const cut = (text: string): string => {
  const bytes = new TextEncoder();
  let room = MOST_BYTES;
  const kept = [...text].filter((sign) => {
    room -= bytes.encode(sign).length;
    return room >= 0;
  });
  return kept.join('');
};

/** Hands a file to the browser’s downloads. */
export const hand = (content: Blob, file: string): void => {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(content);
  link.download = file;
  link.click();
  // The browser has taken the file once this turn is over; a minute is ample for a slow disk.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
};
