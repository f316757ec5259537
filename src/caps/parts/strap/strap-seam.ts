import type { Seam } from '../../../pattern/seam.ts';
import { one, ring } from '../seams/seam.ts';

const EDGES = ['bottom', 'right', 'top', 'left'];

/** The two straps all round. */
export const strapSeam = (): Seam =>
  ring(
    'strapEdge',
    'Strap edge',
    'strapEdge',
    EDGES.map((edge) => one('strap', edge)),
    EDGES.map((edge) => one('strap', edge, 1)),
  );
