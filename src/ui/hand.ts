import { calledName } from '../design/called-name.ts';

/** A cap's name as every file system takes it. */
export const fileName = (name: string): string =>
  calledName(name.replace(/[\\/:*?"<>|\p{Cc}]/gu, ' ').replace(/\s+/g, ' ')).slice(0, 80);

/** Hands a file to the browser’s downloads. */
export const hand = (content: Blob, file: string): void => {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(content);
  link.download = file;
  link.click();
  // The browser has taken the file once this turn is over; a minute is ample for a slow disk.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
};
