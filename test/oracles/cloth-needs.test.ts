import { describe, expect, test } from 'vitest';
import type { ClothSpec } from '../../src/cloth/cloth.ts';
import { layPieces } from '../../src/cloth/lay-pieces.ts';
import { layTask } from '../../src/cloth/lay-task.ts';
import { defaultSpec } from '../../src/design/default-spec.ts';
import { improving } from '../../src/nesting/improve.ts';
import type { Cloth } from '../../src/pattern/piece.ts';
import { inches } from '../../src/units.ts';
import { derive } from '../design/derive.ts';

const YARD = inches(36);
const { cutting } = derive(defaultSpec).draft!;

/** What the first lay of the demo's adult flat-top cap takes of a cloth, mm. */
const takes = (cloth: Cloth, width: number, change: Partial<ClothSpec> = {}): number => {
  const spec: ClothSpec = { ...defaultSpec.cloths[cloth], width, ...change };
  const { value } = improving(
    layTask(layPieces({ caps: [{ name: '', cutting, count: 1 }], cloth, spec }), spec),
    1,
  ).next();
  if (value === undefined || value.layout.unplaced.length > 0) throw new Error('it could not be laid');
  return value.layout.length!;
};

// Common practice of the trade: an adult lined flat-top cap at 1/4 in of allowance takes well under a yard of shell,
// and its lining comes out of about 1/4 yd of 44 in cloth.
describe('the cloth for an adult flat-top cap', () => {
  test('is well under a yard of shell, 44 in wide, all pieces along the cloth', () => {
    expect(takes('outer', inches(44))).toBeLessThan(0.75 * YARD);
  });

  test('is about a quarter of a yard of lining, 44 in wide', () => {
    const lining = takes('lining', inches(44));
    expect(lining).toBeLessThan(0.26 * YARD);
    // No less than the tip, which has to come out of it whole.
    expect(lining).toBeGreaterThan(0.2 * YARD);
  });

  test('is less of wider cloth, as every row of the old conversion charts says', () => {
    const widths = [36, 45, 54, 60].map(inches);
    const lengths = widths.map((width) => takes('outer', width, { cross: true }));
    expect(lengths).toEqual(lengths.toSorted((a, b) => b - a));
    expect(lengths.at(-1)!).toBeLessThan(lengths[0]!);
  });

  test('is more where a nap lets nothing be turned (common practice: 10 to 25 % more, more for few pieces)', () => {
    const free = takes('outer', inches(36), { cross: true });
    expect(takes('outer', inches(36), { cross: true, nap: true })).toBeGreaterThan(free);
  });
});
