import { fetchStyle } from '../../caps/registry.ts';
import type { Spec } from '../../design/spec.ts';
import type { HeadForm } from '../../worn/head-form.ts';
import { headMesh } from '../../worn/head-mesh.ts';
import { type Mesh, meshOf } from '../../worn/mesh.ts';
import { asMet } from '../as-met.ts';
import { same } from '../same.ts';
import { type Extent, extentOf } from './framing.ts';
import type { SeamPath } from './ribbons.ts';
import { lookedInto, seamOn, type WornNow, wornNow } from './worn-now.ts';

/** A cap to be put on a head. */
export interface DressOrder {
  readonly spec: Spec;
  readonly tilted: boolean;
  /** Whether it is looked at from where its lining can be seen. */
  readonly withLining: boolean;
  /** The seam that is pointed at, by id. */
  readonly litSeam: string | null;
}

export type HeadMesh = ReturnType<typeof headMesh>;

/** What is painted of a cap that is worn. */
export interface Dressed {
  readonly cloth: Mesh;
  /** Null where it is the head of the one before. */
  readonly head: HeadMesh | null;
  readonly extent: Extent;
  /** The seam that is pointed at: its lines in space. */
  readonly seam: readonly SeamPath[];
  readonly isLined: boolean;
  readonly withLining: boolean;
  /** Tells one cap from another. */
  readonly mark: string;
}

/** Puts a cap on the head of its spec; null where it cannot be drafted. Its style is fetched first. */
export const dress = async ({ spec, tilted, withLining, litSeam }: DressOrder): Promise<Dressed | null> => {
  await fetchStyle(spec.cap.style);
  const worn = wornNow(asMet(spec), tilted);
  if (worn === null) return null;
  const seen = withLining ? lookedInto(worn) : worn;
  return {
    cloth: meshOf(seen.sheets, worn.pattern.pieces, worn.outer),
    head: headOf(worn.head),
    extent: extentOf(worn.sheets, worn.head),
    seam: seamOn(seen, litSeam),
    isLined: worn.isLined,
    withLining,
    mark: capMark(worn),
  };
};

let last: HeadForm | null = null;

const headOf = (head: HeadForm): HeadMesh | null => {
  if (same(head, last)) return null;
  last = head;
  return headMesh(head);
};

/** The sum of its places, to a hundredth of a millimetre. */
const capMark = ({ sheets }: WornNow): string => {
  let sum = 0;
  for (const { at } of sheets) for (let k = 0; k < at.length; k++) sum += at[k]! * ((k % 97) + 1);
  return sum.toFixed(2);
};
