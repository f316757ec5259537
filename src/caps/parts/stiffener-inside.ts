import { mm, type Words, words } from '../../words.ts';

/** A stiffener that shares the piece of its cover is cut so far inside the stitch line, mm (common practice: one to two). */
export const STIFFENER_INSIDE = 2;

export const stiffenerInside: Words = words`Stiffener is cut ${mm(STIFFENER_INSIDE)} inside the stitch line all round`;
