/** Lengths closer than this (mm) are one point: a thousandth of what a needle can tell. */
export const SAME_POINT = 1e-6;

/** Largest distance (mm) between a fitted outline and the curve it stands for. Sampling and fit together stay under 0.02. */
export const FIT = 0.005;

/** Largest error (mm) in the length of a cubic. */
export const CUBIC_LENGTH = 1e-7;

/** Largest distance (mm) between a cut line and the true parallel of its stitch line. */
export const OFFSET = 0.01;

/** Largest difference (mm) between the two sides of a plain seam. */
export const SEAM = 0.05;

/** Largest distance (mm) between an arc and the cubics that stand for it where only cubics can: a hair is 0.05. */
export const ARC_AS_CUBIC = 1e-4;

/** Largest distance (mm) between an outline and the chords that stand for it while pieces are placed 4 mm apart. */
export const PLACING = 0.05;

/** What is nearer than this (mm) to a fold lies on it: a twentieth of the finest pencil line. */
export const ON_FOLD = 0.01;

/** How far (mm) a chord may leave the curve it stands for where room for a label is sought: less than is kept clear of it. */
export const LABEL_CHORD = 0.5;

/** Largest depth (mm) to which two laid pieces may overlap: less than any knife keeps to. */
export const LAID_OVERLAP = 0.05;

/** Taken off (mm) all round a piece while it is laid, so that what fits exactly still finds its gap. */
export const LAID_SLACK = 0.01;

/** Depth of overlap (mm) that counts as touching while pieces are laid. With twice the slack it stays under LAID_OVERLAP. */
export const LAID_TOUCH = 0.01;

/** Grid (mm) on which the places that two pieces deny each other are reckoned. */
export const LAID_GRID = 1e-4;

/** How far (mm) an outline of few corners may stand outside the true one while pieces are laid. */
export const LAID_CORNERS = 0.3;
