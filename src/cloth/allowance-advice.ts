import { inches } from '../units.ts';
import { mm, type Words, words } from '../words.ts';
import type { ClothSpec } from './cloth.ts';
import { kindOf } from './kinds.ts';

/** From this thickness of one layer a seam of two needs more than 1/4 in to turn, mm (common practice). */
const THICK = 1;
/** Common practice: 1/2 in for tweed, corduroy and all that frays; trimmed afterwards where the seam is enclosed. */
const ROOMY = inches(1 / 2);
const PLAIN = inches(3 / 8);

export interface AllowanceAdvice {
  readonly message: Words;
  /** mm. */
  readonly allowance: number;
}

/** A wider seam allowance for cloth that frays or is thick, or null where the chosen one (mm) will do. */
export const allowanceAdvice = (cloth: ClothSpec, chosen: number): AllowanceAdvice | null => {
  const frays = kindOf(cloth)?.frays ?? false;
  const thick = cloth.thickness >= THICK;
  const wanted = frays && thick ? ROOMY : frays || thick ? PLAIN : 0;
  if (chosen >= wanted - 0.5) return null;
  const why = frays && thick ? 'is thick and frays' : frays ? 'frays' : 'is thick';
  return {
    message: words`This cloth ${why}: ${mm(wanted)} of seam allowance is usual, trimmed where the seam is enclosed.`,
    allowance: wanted,
  };
};
