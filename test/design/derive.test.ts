import { describe, expect, test } from 'vitest';
import type { Values } from '../../src/caps/parameter.ts';
import { defaultSpec } from '../../src/design/default-spec.ts';
import type { Spec } from '../../src/design/spec.ts';
import { judgeRatio } from '../../src/head/shape.ts';
import { inches } from '../../src/units.ts';
import { derive } from './derive.ts';

const wish = (values: Values, head: Partial<Spec['head']> = {}): Spec => ({
  ...defaultSpec,
  head: { ...defaultSpec.head, ...head },
  cap: { ...defaultSpec.cap, values: { ...defaultSpec.cap.values, ...values } },
});

describe('deriving a draft', () => {
  test('starts from the mean of the readings', () => {
    const { draft } = derive(wish({}, { readings: [540, 546, 549] }));
    expect(draft?.head.girth).toBe(545);
    expect(draft?.finishedGirth).toBe(545 + inches(1 / 2));
  });

  test('finishes the demo’s cap: every seam meets', () => {
    const { draft, problems } = derive(defaultSpec);
    expect(problems).toEqual([]);
    expect(draft?.seams.length).toBeGreaterThan(12);
    expect(draft?.seams.every((s) => s.meets)).toBe(true);
  });

  test('refuses a crown that its side band cannot reach, and offers one that it can', () => {
    const { draft, problems } = derive(wish({ crownFullness: 300, sideBandHeight: 40 }));
    expect(draft).toBeNull();
    expect(problems[0]?.field).toBe('cap.crownFullness');
    const nearest = problems[0]?.nearest ?? Number.NaN;
    // Common sense of the cone: at 2π × 40 mm = 251 mm the side band lies flat.
    expect(nearest).toBeLessThan(2 * Math.PI * 40);
    expect(nearest).toBeGreaterThan(200);
    expect(derive(wish({ crownFullness: nearest, sideBandHeight: 40 })).draft).not.toBeNull();
  });

  test('refuses a visor that goes more than half-way round', () => {
    const { problems } = derive(wish({ visorLength: 320 }));
    expect(problems.map((p) => p.field)).toEqual(['cap.visorLength']);
  });

  test('refuses what is not a head at all', () => {
    expect(derive(wish({}, { readings: [] })).problems[0]?.field).toBe('head.girth');
    expect(derive(wish({}, { readings: [21.5] })).problems[0]?.field).toBe('head.girth');
    expect(derive(wish({}, { readings: [Number.NaN] })).draft).toBeNull();
  });

  test('offers the head that the same number is in the other unit: 57 typed in inches is 57 cm', () => {
    const [problem] = derive({ ...wish({}, { readings: [inches(57)] }), unit: 'in' }).problems;
    expect(problem?.field).toBe('head.girth');
    expect(problem?.nearest).toBeCloseTo(570, 9);
  });

  test('refuses an oval where the Head stage says that it is no head’s, and only there', () => {
    for (const breadth of [90, 112, 119, 120, 144, 160, 200, 201, 290]) {
      const { kind, message } = judgeRatio(breadth / 200);
      const refused = kind === 'error' ? [{ field: 'head.breadth', message }] : [];
      expect(derive(wish({}, { length: 200, breadth })).problems, `${breadth}`).toEqual(refused);
    }
    expect(derive(wish({}, { length: 200, breadth: 112 })).draft).toBeNull();
  });

  test('refuses an arc that is no way over this head, and offers the nearest that can be', () => {
    const headOf = (arc: number | null) => wish({}, { readings: [546.1], arc });
    // There and back across a head is less than its girth, and over it a shorter way than round it.
    expect(derive(headOf(1200)).problems).toMatchObject([{ field: 'head.arc', nearest: 546.1 }]);
    expect(derive(headOf(0)).problems).toMatchObject([{ field: 'head.arc', nearest: 546.1 / 4 }]);
    for (const arc of [546.1, 546.1 / 4, null]) expect(derive(headOf(arc)).problems).toEqual([]);
  });

  test('takes the visor from the head’s own oval: a narrow head bends it more', () => {
    const bow = (breadth: number) => {
      const { draft } = derive(wish({ visorDrop: 0 }, { length: 200, breadth }));
      const inner = draft!.pattern.pieces
        .find((p) => p.id === 'visor')!
        .outline.find((e) => e.name === 'inner')!.path;
      return inner[0]!.from.y;
    };
    expect(bow(150)).toBeGreaterThan(bow(180) + 3);
  });

  test('says of a bought insert how far its inner edge is from the band, and how it will slope', () => {
    const { draft } = derive(
      wish({ visorSource: 'insert', insertWidth: 170, insertDepth: 60, insertBow: 40 }),
    );
    const fit = draft!.insert!;
    // Chord 170 and bow 40 is an arc of radius 110.3 over 1.7596 rad.
    const r = (85 ** 2 + 40 ** 2) / 80;
    expect(fit.innerEdge).toBeCloseTo(2 * r * Math.asin(85 / r), 6);
    expect(fit.difference).toBeCloseTo(fit.innerEdge - fit.stretch, 9);
    expect(fit.drop).toBeGreaterThan(0.2);
    expect(fit.drop).toBeLessThan(1.2);
    const straight = derive(wish({ visorSource: 'insert', insertBow: 0 })).draft!.insert!;
    expect(straight.drop).toBeCloseTo(Math.PI / 2, 6);
  });
});
