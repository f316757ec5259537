import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ball } from '../../src/caps/ball/ball.ts';
import { ballParameters } from '../../src/caps/ball/parameters.ts';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { drawPattern, drawPiece } from '../../src/drawing/draw-piece.ts';
import type { PieceDrawing, TextMark } from '../../src/drawing/drawing.ts';
import { dateWords } from '../../src/drawing/label-words.ts';
import { SMALLEST_TEXT } from '../../src/drawing/roles.ts';
import { blockSize } from '../../src/drawing/text-block.ts';
import { contains } from '../../src/geometry/inside.ts';
import { crossings } from '../../src/geometry/intersect.ts';
import { type Path, polygon } from '../../src/geometry/path.ts';
import { point, rotate } from '../../src/geometry/point.ts';
import type { Pattern } from '../../src/pattern/pattern.ts';
import type { Unit } from '../../src/units.ts';
import { crescent, strip, withoutAllowance } from '../pattern/sample-pieces.ts';
import { cap, HEAD, wishesWith } from './caps.ts';

const label = { cap: 'Summer cap', wearer: 'Cornet', finishedGirth: 558.8, date: '2026-11-25' };
const options = { unit: 'cm' as Unit, halves: false, dimensions: false, label };
const drawn = (pattern: Pattern, more: Partial<typeof options> = {}) =>
  drawPattern(pattern, { ...options, ...more });

const labelOf = (drawing: PieceDrawing): TextMark[] =>
  drawing.marks.filter((m): m is TextMark => m.kind === 'text' && (m.role === 'title' || m.role === 'label'));

const said = (drawing: PieceDrawing): string =>
  labelOf(drawing)
    .flatMap((m) => m.lines)
    .join(' ');

/** The frame of a block of text that starts at its point. */
const frame = (mark: TextMark): Path => {
  expect(mark.align).toBe('start');
  const { width, height } = blockSize(mark);
  const corner = (x: number, y: number) => rotate(point(mark.at.x + x, mark.at.y + y), mark.angle, mark.at);
  return polygon([
    corner(0, -height / 2),
    corner(width, -height / 2),
    corner(width, height / 2),
    corner(0, height / 2),
  ]);
};

const linesOf = (drawing: PieceDrawing, role: string): Path[] =>
  drawing.marks.flatMap((m) => (m.kind === 'line' && m.role === role ? [m.path] : []));

const liesWithin = (mark: TextMark, outline: Path): void => {
  const block = frame(mark);
  expect(crossings(block, outline)).toEqual([]);
  expect(contains(outline, block[0]!.from)).toBe(true);
};

describe('what a piece says of itself', () => {
  it('is its name, the cap, the wearer, cloth and count, allowance, finished girth and date', () => {
    const tip = drawn(cap()).find((d) => d.id === 'tip')!;
    for (const fact of [
      'Tip',
      'Summer cap',
      'For Cornet',
      'Outer: cut 1',
      'Seam allowance 0.64 cm included',
      'Finished girth 55.9 cm',
      '25 Nov 2026',
    ]) {
      expect(said(tip)).toContain(fact);
    }
  });

  it('is said in inches to those who sew in inches', () => {
    const tip = drawn(cap(), { unit: 'in' }).find((d) => d.id === 'tip')!;
    expect(said(tip)).toContain('Seam allowance 1/4 in included');
    expect(said(tip)).toContain('Finished girth 22 in');
  });

  it('counts mirrored pieces apart, and says what is cut from each cloth', () => {
    const oval = drawn(cap({ tipRatio: 0.8 })).find((d) => d.id === 'sideBand')!;
    expect(said(oval)).toContain('Outer: cut 2 + 2 mirrored');
    const visor = drawn(cap()).find((d) => d.id === 'visor')!;
    expect(said(visor)).toContain('Outer: cut 2');
    expect(said(visor)).toContain('Interlining: cut 1');
  });

  it('says on the fold where it is a half, and nowhere else', () => {
    const [wholes, halves] = [drawn(cap()), drawn(cap(), { halves: true })];
    for (const d of wholes) expect(said(d)).not.toContain('on the fold');
    for (const d of halves) expect(said(d).includes('on the fold')).toBe(d.onFold);
    expect(halves.filter((d) => d.onFold).length).toBeGreaterThan(5);
    // The fold is no seam: it does not make the allowance uneven.
    for (const d of halves) expect(said(d)).not.toContain('elsewhere');
  });

  it('tells each width where the seams have different ones', () => {
    const tip = drawn(cap({ sideAllowance: 10 })).find((d) => d.id === 'sideBand')!;
    expect(said(tip)).toMatch(/Seam allowance included: band 0\.64 cm, sides 1\.0 cm, top 0\.64 cm/);
  });

  it('says that a stiffener is cut on the line', () => {
    const piece = withoutAllowance(crescent(190, 40, 55));
    const { allowances } = cap();
    expect(said(drawPiece(piece, allowances, options))).toContain('No seam allowance: cut on the line');
  });

  it('says of a bought insert’s outline that there is nothing to cut, and so nothing of allowances', () => {
    const outline = drawPattern(cap({ visorSource: 'insert' }), options).find(({ id }) => id === 'stiffener');
    expect(said(outline!)).toContain('Nothing to cut');
    expect(said(outline!)).not.toContain('on the line');
  });

  it('on the table is only its name and how many to cut', () => {
    const [tip] = drawPattern(cap(), { ...options, label: null });
    expect(labelOf(tip!).flatMap((m) => m.lines)).toEqual(['Tip', 'Outer: cut 1']);
  });

  it('writes a date so that no one takes the month for the day', () => {
    expect(dateWords('2026-03-05')).toBe('5 Mar 2026');
    expect(dateWords('2026-12-31T10:00:00Z')).toBe('31 Dec 2026');
    expect(dateWords('next spring')).toBe('next spring');
    expect(dateWords('2026-13-05')).toBe('2026-13-05');
  });
});

describe('where a label stands', () => {
  it('is inside the stitch line of every whole piece, in either unit', () => {
    for (const unit of ['cm', 'in'] as const) {
      const pattern = cap();
      drawn(pattern, { unit }).forEach((d, i) => {
        const stitchLine = pattern.pieces[i]!.outline.flatMap((e) => e.path);
        for (const mark of labelOf(d)) liesWithin(mark, stitchLine);
      });
    }
  });

  it('is inside a band of 38 mm and a strap of 13 mm (common sizes)', () => {
    for (const [length, height] of [
      [560, 38],
      [250, 13],
    ] as const) {
      const piece = strip(length, height);
      const drawing = drawPiece(piece, cap().allowances, options);
      const stitchLine = piece.outline.flatMap((e) => e.path);
      for (const mark of labelOf(drawing)) liesWithin(mark, stitchLine);
      expect(said(drawing)).toContain('25 Nov 2026');
    }
  });

  it('is never on a grain arrow so short that it would fit between two lines of it', () => {
    // A narrow strap with a wide allowance, where the label goes first and the grainline into what room is left.
    const strap = { visorLength: 100, visorDepth: 25, visorDrop: 0, visorFullness: 0, strapWidth: 8.24 };
    const values = { ...strap, ease: 0, bandHeight: 20, lining: false, allowance: 9.75 };
    for (const d of drawn(cap(values)))
      for (const mark of labelOf(d))
        for (const grain of linesOf(d, 'grain')) {
          expect(crossings(frame(mark), grain)).toEqual([]);
          expect(contains(frame(mark), grain[0]!.from)).toBe(false);
        }
  });

  it('is never on the grain arrow, never outside the cut line, never under 8 point, and leaves out no fact', () => {
    fc.assert(
      fc.property(wishesWith(), fc.boolean(), fc.constantFrom('cm', 'in'), (values, halves, unit) => {
        for (const d of drawn(cap(values), { halves, unit })) {
          const texts = labelOf(d);
          for (const mark of texts) {
            liesWithin(mark, d.silhouette);
            expect(mark.size).toBeGreaterThanOrEqual(SMALLEST_TEXT - 1e-9);
            for (const grain of linesOf(d, 'grain')) expect(crossings(frame(mark), grain)).toEqual([]);
          }
          const everything = said(d).replaceAll(' · ', ' ');
          expect(everything).toContain(d.name);
          expect(everything).toContain('Summer cap For Cornet');
          expect(everything).toContain('25 Nov 2026');
        }
      }),
      { numRuns: 40 },
    );
  });

  it('is never on the tick of a notch, which goes into a piece that has no allowance there', () => {
    const { pattern, finishedGirth } = ball.draft(defaultsOf(ballParameters), HEAD);
    for (const unit of ['cm', 'in'] as const)
      for (const d of drawn(pattern, { unit, label: { ...label, cap: 'Cornet’s cap', finishedGirth } }))
        for (const mark of labelOf(d))
          for (const tick of linesOf(d, 'notch')) {
            expect(crossings(frame(mark), tick), `${d.id}, ${unit}`).toEqual([]);
            expect(contains(frame(mark), tick[0]!.from)).toBe(false);
          }
  });

  it('has no other label and no button, gap or fold words under it', () => {
    for (const halves of [false, true]) {
      for (const d of drawn(cap(), { halves })) {
        for (const mark of labelOf(d)) {
          for (const path of linesOf(d, 'mark')) expect(crossings(frame(mark), path)).toEqual([]);
        }
      }
    }
  });
});
