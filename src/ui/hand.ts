/** A name that every file system takes. */
export const fileName = (name: string): string =>
  name
    .replace(/[\\/:*?"<>|\p{Cc}]/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim()
    .slice(0, 80) || 'Cap';

/** Hands a file to the browser’s downloads. */
export const hand = (content: Blob, file: string): void => {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(content);
  link.download = file;
  link.click();
  // The browser has taken the file once this turn is over; a minute is ample for a slow disk.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
};
