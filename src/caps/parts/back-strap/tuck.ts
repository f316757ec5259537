import { mm, words } from '../../../words.ts';

/** Each end of a strap goes this far in between crown and sweatband, mm (our own measure). */
export const TUCK = 15;

/** What the ends of a strap or casing say of themselves. */
export const tuckNote = words`The ends go ${mm(TUCK)} in between crown and sweatband, up to the notches.`;
