import type { Path } from './path.ts';
import { mirrored } from './transform.ts';

/** The whole of an edge that is symmetric about x = 0, left to right, from its right half (which starts on x = 0). */
export const wholeEdge = (rightHalf: Path): Path => [...mirrored(rightHalf), ...rightHalf];
