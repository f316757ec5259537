/** Words in letters that the typeface lacks, as a picture on clear ground. Lengths in ems. */
export interface TextPicture {
  readonly png: Uint8Array;
  readonly width: number;
  readonly height: number;
  /** How far it hangs below the baseline. */
  readonly below: number;
}

/** The pictures that a set of sheets needs, by their words; see pictureKey. */
export type Pictures = ReadonlyMap<string, TextPicture>;

export const pictureKey = (text: string, bold: boolean): string => `${bold ? 'bold' : 'regular'} ${text}`;
