import { describe, expect, test } from 'vitest';
import { beret } from '../../src/caps/beret/beret.ts';
import { type BeretValues, beretParameters } from '../../src/caps/beret/parameters.ts';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { pathLength } from '../../src/geometry/measure.ts';
import { type Path, radius } from '../../src/geometry/path.ts';
import { checkSeams } from '../../src/pattern/seam-check.ts';
import { inches } from '../../src/units.ts';

const draft = (girth: number, values: Partial<BeretValues>) =>
  beret.draft(
    { ...defaultsOf(beretParameters), ease: 0, underSlope: 0, ...values },
    { girth, ratio: 0.8, arc: 0.5625 * girth },
  );
type Draft = ReturnType<typeof draft>;
const edge = ({ pattern }: Draft, id: string, name: string): Path =>
  pattern.pieces.find((p) => p.id === id)!.outline.find((e) => e.name === name)!.path;
const across = (path: Path): number => {
  const [curve] = path;
  if (curve?.kind !== 'arc') throw new Error('not a true arc');
  return 2 * radius(curve);
};
/** How far a top of some diameter reaches past the head. */
const spreadOf = (diameter: number, girth: number): number => (diameter - girth / Math.PI) / 2;

describe('published berets and tams', () => {
  // M. A. McCormack, Spool Knitting, 1909, "Little boy's hat": the crown is half the head across. So its edge is π/2 of the head.
  test('a head of 22 in has a crown of 11, and 34.558 in round it', () => {
    const girth = inches(22);
    const cap = draft(girth, { spread: spreadOf(inches(11), girth) });
    expect(across(edge(cap, 'tip', 'rim'))).toBeCloseTo(inches(11), 9);
    expect(pathLength(edge(cap, 'tip', 'rim')) / 25.4).toBeCloseTo(34.558, 3);
    expect(pathLength(edge(cap, 'tip', 'rim')) / girth).toBeCloseTo(Math.PI / 2, 9);
  });

  // Common practice (a published tutorial): a disc of 29 cm, a head of 56 cm less 2. It prints a hole of 17 cm.
  test('a disc of 29 cm over a hole of 54 cm stands out 5.9 cm, on a hole of 17.19 cm and not the 17 that is printed', () => {
    const cap = draft(540, { spread: spreadOf(290, 540), underPieces: '2' });
    expect(spreadOf(290, 540)).toBeCloseTo(59, 0);
    const hole = across(edge(cap, 'sideBandFront', 'bottom'));
    expect(hole / 10).toBeCloseTo(17.189, 3);
    expect(across(edge(cap, 'sideBandFront', 'top'))).toBeCloseTo(290, 9);
    expect(2 * pathLength(edge(cap, 'sideBandFront', 'top'))).toBeCloseTo(911.1, 1);
    expect((2 * pathLength(edge(cap, 'sideBandFront', 'top'))) / 540).toBeCloseTo(1.687, 3);
    // A hole of 17 cm across would be tighter by more than half a centimetre.
    expect(pathLength(edge(cap, 'band', 'bottom')) - Math.PI * 170).toBeGreaterThan(5);
  });

  // G. A. Martin, Make Your Own Hats, 1921, ch. V: a circle of 14 in gathered to a head wire of 24 to 25 in.
  test.each([
    [24, 1.833],
    [25, 1.759],
  ])('a circle of 14 in gathered to a head of %d in is %d times as long', (head, ratio) => {
    const girth = inches(head);
    const cap = draft(girth, { beretCrown: 'gathered', spread: spreadOf(inches(14), girth) });
    const report = checkSeams(cap.pattern).find(({ seam }) => seam.id === 'bandToCrown')!;
    expect(report.b / 25.4).toBeCloseTo(43.982, 3);
    expect(1 + report.ease).toBeCloseTo(ratio, 3);
    expect(report.meets).toBe(true);
  });

  // Evening Republican (Rensselaer, Indiana), 4 May 1911, "Child's plain hat": a crown disc of 14 to 16 in, gathered.
  test('a child’s discs of 14 and 16 in are 43.98 and 50.27 in round', () => {
    for (const [diameter, round] of [
      [14, 43.98],
      [16, 50.27],
    ] as const) {
      const girth = inches(19.5);
      const cap = draft(girth, { beretCrown: 'gathered', spread: spreadOf(inches(diameter), girth) });
      expect(pathLength(edge(cap, 'tip', 'rim')) / 25.4).toBeCloseTo(round, 2);
    }
  });
});
