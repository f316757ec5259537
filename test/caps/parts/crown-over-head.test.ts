import { describe, expect, test } from 'vitest';
import { defaultsOf } from '../../../src/caps/parameter.ts';
import { scrub } from '../../../src/caps/scrub/scrub.ts';
import type { Head, Style } from '../../../src/caps/style.ts';
import { threePiece } from '../../../src/caps/three-piece/three-piece.ts';
import { headArc } from '../../../src/head/head-arc.ts';

const headOf = (girth: number, longer: number): Head => ({
  girth,
  ratio: 0.8,
  arc: headArc(null, girth) * longer,
});

/** What stands in the way, mended one after the other by the nearest values. */
const mendings = (style: Style, from: Head): { readonly fields: string[]; readonly head: Head } => {
  let [values, head]: [ReturnType<typeof defaultsOf>, Head] = [defaultsOf(style.parameters), from];
  const fields: string[] = [];
  for (let [problem] = style.problems(values, head); problem; [problem] = style.problems(values, head)) {
    expect(problem.nearest, problem.field).toBeDefined();
    expect(fields).not.toContain(problem.field);
    fields.push(problem.field);
    if (problem.field === 'head.arc') head = { ...head, arc: problem.nearest as number };
    else values = { ...values, [problem.field.replace('cap.', '')]: problem.nearest! };
  }
  return { fields, head };
};

describe.each<Style>([scrub, threePiece])('a $name on a head that is high for its girth', (style) => {
  test('is made higher, for heads from a child’s to the largest man’s and an arc up to a tenth longer than the estimate', () => {
    for (const girth of [500, 546, 580, 610, 635])
      for (const longer of [1, 1.05, 1.1]) {
        const { fields } = mendings(style, headOf(girth, longer));
        expect(fields, `${girth} mm, ${longer}`).not.toContain('head.arc');
      }
  });

  test('asks for another measurement where no crown reaches, and says how far the highest does', () => {
    const wished = headOf(580, 1.6);
    const { fields, head } = mendings(style, wished);
    expect(fields).toContain('head.arc');
    expect(head.arc).toBeLessThan(wished.arc);
    // It is still a head high for its girth that the highest crown goes over.
    expect(head.arc).toBeGreaterThan(headArc(null, 580) * 1.2);
  });
});
