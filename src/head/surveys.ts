/** The least and the most that was measured: mm, or a ratio. */
export interface Range {
  readonly least: number;
  readonly most: number;
}

export const isWithin = (n: number, { least, most }: Range): boolean => n >= least && n <= most;

/**
 * Adults: the least and the most among 4,082 men and 1,986 women, worked out from the public individual records of
 * ANSUR II (Gordon and others, 2012 Anthropometric Survey of U.S. Army Personnel, NATICK/TR-15/007, 2014). They are
 * soldiers of one army, mostly young; some women were measured over braided hair.
 */
export const ADULTS = {
  girth: { least: 500, most: 635 },
  length: { least: 168, most: 225 },
  breadth: { least: 131, most: 180 },
  ratio: { least: 0.66, most: 0.961 },
} as const satisfies Record<string, Range>;

/**
 * Babies and children to five years: from the line of three standard deviations below the median for newborn girls
 * to three above it for boys of 60 months (WHO Child Growth Standards, head circumference-for-age).
 */
export const SMALL_CHILDREN = { girth: { least: 303, most: 552 } } as const satisfies Record<string, Range>;

/**
 * Children from two to four years, the smallest measured for head length and breadth: the 5th percentile of girls
 * (Snyder and others, Anthropometry of Infants, Children, and Youths to Age 18 for Product Safety Design, 1977).
 */
export const TODDLERS = { length: 163, breadth: 126 } as const;

/** All girths between a newborn's and the largest adult's: the two surveys overlap. */
export const HEAD_GIRTHS: Range = { least: SMALL_CHILDREN.girth.least, most: ADULTS.girth.most };

/**
 * Girths (mm) outside of which there is no head under the tape. Our own choice, well clear of the surveys: a baby
 * born far too early is near 220 (from memory), and 40 mm of hair all round would make the largest adult 635 + 250.
 */
export const POSSIBLE_GIRTHS: Range = { least: 200, most: 900 };
