import { describe, expect, test } from 'vitest';
import type { LineRole, Mark } from '../../src/drawing/drawing.ts';
import { boundsOf } from '../../src/geometry/bounds.ts';
import { boxHeight, boxWidth } from '../../src/geometry/box.ts';
import { point } from '../../src/geometry/point.ts';
import type { Part } from '../../src/print/cover/flow.ts';
import { inchSquare, metricSquare } from '../../src/print/cover/squares.ts';
import { parseLength } from '../../src/units.ts';

const ROLES: readonly LineRole[] = ['cut', 'stitch', 'row', 'fold', 'grain', 'notch', 'centre', 'sheet'];
const drawn = (part: Part): readonly Mark[] => part(point(20, 250)).marks;
const inch = drawn(inchSquare(new Set(ROLES), { join: 'butt' }, true));
const squares = { one: drawn(metricSquare(1)), many: drawn(metricSquare(9)), inch };

const textsOf = (marks: readonly Mark[]) => marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []));
const said = (marks: readonly Mark[]) => textsOf(marks).map(({ lines }) => lines.join(' '));
/** The sides of the largest line drawn: the square's own. mm. */
const sidesOf = (marks: readonly Mark[]) => {
  const boxes = marks.flatMap((mark) => (mark.kind === 'line' ? [boundsOf(mark.path)] : []));
  return [boxWidth, boxHeight].map((side) => Math.max(...boxes.map(side)));
};
const lengthIn = (text: string): number => {
  const read = parseLength(text, 'cm');
  if (!read.ok) throw new Error(text);
  return read.mm;
};

describe('a test square', () => {
  test('is as long both ways as is written along its sides', () => {
    for (const [name, marks] of Object.entries(squares)) {
      const labels = textsOf(marks).filter(({ role }) => role === 'dimension');
      expect(labels, name).toHaveLength(2);
      for (const { lines } of labels)
        for (const side of sidesOf(marks)) expect(lengthIn(lines.join()), name).toBeCloseTo(side, 9);
    }
  });

  test('is 100 mm or 4 in, and written along one side level and along one upright', () => {
    expect(sidesOf(squares.one)).toEqual([100, 100].map((side) => expect.closeTo(side, 9)));
    expect(sidesOf(inch)).toEqual([101.6, 101.6].map((side) => expect.closeTo(side, 9)));
    for (const marks of Object.values(squares)) {
      const turns = textsOf(marks)
        .filter(({ role }) => role === 'dimension')
        .map(({ angle }) => angle);
      expect(turns.toSorted()).toEqual([0, Math.PI / 2]);
    }
  });

  test('asks to be measured, and lets the rest be printed where it measures what it is', () => {
    for (const marks of [squares.one, squares.many]) {
      const [verdict, ...others] = said(marks).filter((words) => words.includes('both ways'));
      expect(others).toEqual([]);
      const [before, after] = verdict!.split(' both ways: ');
      expect(lengthIn(before!)).toBeCloseTo(sidesOf(marks)[0]!, 9);
      expect(after).toBe(marks === squares.many ? 'print the rest.' : 'all is well.');
    }
  });
});

describe('the key of the lines', () => {
  test('names each as the trade does, beside a sample drawn as that line', () => {
    const names: Readonly<Record<string, RegExp>> = {
      cut: /^cut line$/,
      stitch: /^stitch line$/,
      row: /topstitching/,
      fold: /^fold/,
      grain: /^grainline, along the cloth$/,
      notch: /^notch/,
      centre: /^centre line$/,
      sheet: /sheets join/,
    };
    const samples = inch.flatMap((mark) => (mark.kind === 'line' ? [mark] : []));
    for (const role of ROLES) {
      const name = textsOf(inch).filter(({ lines }) => names[role]!.test(lines.join(' ')));
      expect(name, role).toHaveLength(1);
      const own = samples.filter((mark) => mark.role === role);
      expect(own.length, role).toBeGreaterThan(0);
      for (const { path } of own) {
        const { min, max } = boundsOf(path);
        expect(Math.abs((min.y + max.y) / 2 - name[0]!.at.y), role).toBeLessThan(0.5);
        expect(max.x, role).toBeLessThan(name[0]!.at.x);
      }
    }
  });
});
