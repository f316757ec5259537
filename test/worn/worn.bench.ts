import { bench, describe } from 'vitest';
import { defaultsOf, type Values } from '../../src/caps/parameter.ts';
import { fetchStyles } from '../../src/caps/registry.ts';
import type { Head } from '../../src/caps/style.ts';
import { assemble } from '../../src/worn/assemble.ts';
import { meshOf } from '../../src/worn/mesh.ts';
import { putOn } from '../../src/worn/put-on.ts';

const HEAD: Head = { girth: 560, ratio: 0.8, arc: 315 };

/** Each time another ease, so that nothing can be kept from the time before. */
const EASES = 16;

for (const style of await fetchStyles()) {
  const drafts = Array.from({ length: EASES }, (_, i) => {
    const values = { ...defaultsOf(style.parameters), ease: 8 + i / 2 } as Values;
    return { values, draft: style.draft(values, HEAD) };
  });
  const worn = (i: number) => {
    const { values, draft } = drafts[i % EASES]!;
    const { pieces } = draft.pattern;
    return meshOf(putOn(assemble(style.form(values, HEAD), pieces), draft, HEAD).sheets, pieces);
  };
  const triangles = worn(0).index.length / 3;
  describe(`${style.name} on a head, from its form to ${triangles} triangles`, () => {
    let i = 0;
    bench('ours', () => void worn(i++), { warmupIterations: 60, iterations: 60 });
  });
}
