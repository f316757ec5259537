import type { Seam } from '../pattern/seam.ts';
import type { Step } from './step.ts';

/** A copy of a piece. */
const copyName = (piece: string, copy: number): string => `${piece} ${copy}`;

/** Which copies each step sews, and which are sewn to something by its end. */
export const joinedIn = (
  steps: readonly Step[],
  seams: readonly Seam[],
): readonly { readonly news: readonly string[]; readonly joined: readonly string[] }[] => {
  const known = new Map(seams.map((seam) => [seam.id, seam]));
  const joined = new Set<string>();
  return steps.map((step) => {
    const uses = step.seams.flatMap((id) => {
      const seam = known.get(id);
      return seam ? [...seam.a, ...seam.b] : [];
    });
    const news = [...new Set(uses.map(({ piece, copy }) => copyName(piece, copy)))];
    for (const copy of news) joined.add(copy);
    return { news, joined: [...joined] };
  });
};
