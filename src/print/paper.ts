/** Papers by name. Rolls have a width and are as long as the pattern needs; 'one-page' is exactly as large as the pattern. */
export type PaperName =
  | 'a4'
  | 'letter'
  | 'a3'
  | 'legal'
  | 'tabloid'
  | 'roll-610'
  | 'roll-914'
  | 'roll-1067'
  | 'roll-594'
  | 'roll-841'
  | 'one-page';

/** How the pattern is to be printed. Lengths in mm. */
export interface PaperSpec {
  readonly paper: PaperName;
  readonly orientation: 'portrait' | 'landscape';
  /** Kept free on all four sides. */
  readonly margin: number;
  /** Overlapped sheets share a strip and lose one margin; butted sheets lose two and meet edge to edge. */
  readonly join: 'overlap' | 'butt';
  readonly overlap: number;
  /** Symmetric pieces as halves on the fold. */
  readonly halves: boolean;
  /** What the 100 mm test square measured on this printer, across and down; 100 is true. */
  readonly measuredAcross: number;
  readonly measuredDown: number;
}
