import { describe, expect, test } from 'vitest';
import { commonWidths } from '../../src/cloth/buying.ts';
import { clothProblems } from '../../src/cloth/cloth-problems.ts';
import { clothKinds, clothOfKind, kindOf } from '../../src/cloth/kinds.ts';
import { defaultSpec } from '../../src/design/default-spec.ts';
import { inches } from '../../src/units.ts';

const { cloths } = defaultSpec;
const clothOf = (id: string) => clothOfKind(kindOf({ kind: id })!, cloths.outer);

describe('the kinds of cloth', () => {
  test('can all be sewn as they come', () => {
    for (const kind of clothKinds) {
      const cloth = clothOfKind(kind, cloths.outer);
      expect(clothProblems({ ...cloths, outer: cloth }), kind.name).toEqual([]);
    }
  });

  test('shrink no less along the selvedge than across it, as woven cloth does whose warp was held tight (common practice)', () => {
    for (const { id, name } of clothKinds) {
      const { shrinkLength, shrinkWidth } = clothOf(id);
      expect(shrinkLength, name).toBeGreaterThanOrEqual(shrinkWidth);
    }
    expect(clothOf('poplin')).toMatchObject({ shrinkLength: 0.03, shrinkWidth: 0.02 });
  });

  test('are as thick as cloth is: linings thinnest, cap cottons and denim under 1 mm, coatings up to 2 mm (common practice)', () => {
    const thick = (id: string) => kindOf({ kind: id })!.thickness;
    for (const { name, thickness } of clothKinds) {
      expect(thickness, name).toBeGreaterThanOrEqual(0.1);
      expect(thickness, name).toBeLessThanOrEqual(2);
    }
    const row = ['satin-lining', 'quilting-cotton', 'linen', 'denim', 'tweed', 'melton'].map(thick);
    expect(row).toEqual(row.toSorted((a, b) => a - b));
    // Cotton of 340 g/m², a medium denim, is about 0.75 mm thick.
    for (const id of ['denim', 'canvas']) expect(Math.abs(thick(id) - 0.75)).toBeLessThan(0.15);
  });

  test('come as wide as shops have them, plastic sheet apart', () => {
    for (const { id, name, width } of clothKinds.filter((kind) => kind.id !== 'visor-sheet')) {
      expect(width, `${name} ${id}`).toBeGreaterThanOrEqual(0.98 * inches(36));
      expect(width, `${name} ${id}`).toBeLessThanOrEqual(inches(60));
    }
  });

  test('leave what the user alone can know: what is at hand of it, its price, whether it was washed', () => {
    const own = { ...cloths.outer, price: 12, length: 800, washed: true, folded: true };
    expect(clothOfKind(kindOf({ kind: 'tweed' })!, own)).toMatchObject({
      price: 12,
      length: 800,
      washed: true,
      folded: true,
    });
  });
});

describe('the widths that shops have', () => {
  test('are 36 to 60 in, or in metres the same to a finger’s breadth', () => {
    expect(commonWidths.in.map((width) => width / 25.4)).toEqual([36, 44, 54, 60]);
    expect(commonWidths.cm).toHaveLength(commonWidths.in.length);
    for (const [i, width] of commonWidths.cm.entries())
      expect(Math.abs(width - commonWidths.in[i]!)).toBeLessThan(30);
  });
});

describe('a cloth', () => {
  const problems = (change: Partial<typeof cloths.outer>) =>
    clothProblems({ ...cloths, outer: { ...cloths.outer, ...change } }).map(({ field, nearest }) => [
      field,
      nearest,
    ]);

  test('is neither a ribbon of 9 cm nor a sheet of 5 m across; what is nearest is offered', () => {
    expect(problems({ width: 90 })).toEqual([['cloth.outer.width', 100]]);
    expect(problems({ width: 5000 })).toEqual([['cloth.outer.width', 4000]]);
    expect(problems({ width: Number.NaN })).toHaveLength(1);
    // The widest that is woven for theatre backdrops and sheeting is about 3.2 m.
    for (const width of [100, 900, 3200]) expect(problems({ width })).toEqual([]);
  });

  test('is not as thick as a carpet, and no longer than a bolt', () => {
    expect(problems({ thickness: 10 })).toEqual([['cloth.outer.thickness', 6]]);
    expect(problems({ thickness: -1 })).toEqual([['cloth.outer.thickness', 0]]);
    expect(problems({ length: 60_000 })).toEqual([['cloth.outer.length', 50_000]]);
    expect(problems({ length: 20 })).toEqual([['cloth.outer.length', 50]]);
    expect(problems({ length: null })).toEqual([]);
  });
});
