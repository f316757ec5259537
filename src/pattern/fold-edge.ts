/** The edge that closes a half piece along the fold. */
export const FOLD_EDGE = 'fold';
