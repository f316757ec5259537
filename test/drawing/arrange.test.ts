import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrange, type Placed } from '../../src/drawing/arrange.ts';
import { drawPattern } from '../../src/drawing/draw-piece.ts';
import { boxesMeet, boxGrown } from '../../src/geometry/box.ts';
import { add } from '../../src/geometry/point.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import { cap, defaults, wishesWith } from './caps.ts';

const laid = (pattern: Pattern, halves = false): Placed[] =>
  arrange(drawPattern(pattern, { unit: 'cm', halves, dimensions: false, label: null }));

const boxOf = ({ drawing: { bounds }, at }: Placed) => ({
  min: add(bounds.min, at),
  max: add(bounds.max, at),
});

/** Pieces in rows: each row's middle is lower than the one before. */
const rows = (placed: readonly Placed[]): string[] => {
  const found = new Map<number, string[]>();
  for (const p of placed) {
    const { min, max } = boxOf(p);
    const middle = Math.round(((min.y + max.y) / 2) * 1000);
    found.set(middle, [...(found.get(middle) ?? []), p.drawing.id]);
  }
  return [...found].sort((a, b) => b[0] - a[0]).map(([, ids]) => ids.join(' '));
};

describe('pieces laid on the table', () => {
  it('lie in rows: broad pieces together, every band and strap alone, outer cloth above lining', () => {
    expect(rows(laid(cap()))).toEqual([
      'tip sideBand visor stiffener',
      'band',
      'strap',
      'liningTip liningSide',
      'liningBand',
    ]);
  });

  it('never lie on each other', () => {
    fc.assert(
      fc.property(wishesWith(), fc.boolean(), (values, halves) => {
        const boxes = laid(cap(values), halves).map(boxOf);
        boxes.forEach((a, i) => {
          for (const b of boxes.slice(i + 1)) expect(boxesMeet(boxGrown(a, 5), b)).toBe(false);
        });
      }),
      { numRuns: 25 },
    );
  });

  it('keep their rows whatever the sliders say, as long as the cap has the same pieces', () => {
    const same = { sideBandPieces: '4', lining: true, strap: true } as const;
    const usual = rows(laid(cap(same)));
    fc.assert(
      fc.property(wishesWith(same), (values) => {
        expect(rows(laid(cap(values)))).toEqual(usual);
      }),
      { numRuns: 40 },
    );
    // A straight side band is a rectangle, a low one long and narrow: it stays with the tip.
    expect(rows(laid(cap({ ...defaults, ...same, crownFullness: 0, sideBandHeight: 30 })))).toEqual(usual);
  });

  it('start each row at the left', () => {
    const placed = laid(cap());
    for (const id of ['tip', 'band', 'strap', 'liningTip', 'liningBand']) {
      expect(boxOf(placed.find((p) => p.drawing.id === id)!).min.x).toBeCloseTo(0, 9);
    }
  });

  it('move by little when a slider moves by little', () => {
    const at = (crownFullness: number) => laid(cap({ crownFullness }));
    const [before, after] = [at(100), at(100.5)];
    before.forEach((p, i) => {
      const q = after[i]!;
      expect(Math.hypot(p.at.x - q.at.x, p.at.y - q.at.y)).toBeLessThan(2);
    });
  });

  it('of no drawings are none', () => {
    expect(arrange([])).toEqual([]);
  });
});
