import { describe, expect, it } from 'vitest';
import type { Mark, TextMark } from '../../src/drawing/drawing.ts';
import { boxesMeet } from '../../src/geometry/box.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { type Path, pathEnd, pathStart, polygon } from '../../src/geometry/path.ts';
import { point } from '../../src/geometry/point.ts';
import { paperProblems } from '../../src/print/paper-problems.ts';
import { sheetName } from '../../src/print/sheet.ts';
import { sheetsOf } from '../../src/print/sheets.ts';
import { textBox } from '../../src/print/text-box.ts';
import { adultCap, band, disc, drawn, heading, plainPaper, rectangle } from './samples.ts';

const textsOf = (marks: readonly Mark[]): readonly TextMark[] =>
  marks.filter((m): m is TextMark => m.kind === 'text');
const wordsOf = (marks: readonly Mark[]): readonly string[] => textsOf(marks).flatMap((t) => t.lines);

describe('a set of sheets', () => {
  const set = sheetsOf(adultCap(), plainPaper, heading);
  const [map, ...pattern] = set.sheets;

  it('counts the first sheet, and says what was saved against rows', () => {
    expect(set.sheets.map((s) => s.number)).toEqual(set.sheets.map((_, i) => i + 1));
    expect(set.sheets.every((s) => s.of === set.sheets.length)).toBe(true);
    expect(set.saved).toBe(set.naiveCount - set.sheets.length);
    expect(set.saved).toBeGreaterThan(0);
  });

  it('says on the first sheet whose cap it is, how to print, what the lines mean, and which pieces there are', () => {
    const words = wordsOf(map!.marks);
    expect(words).toContain('Cornet’s cap');
    expect(words).toContain('For Cornet · Finished girth 55.9 cm · 25 Nov 2026');
    expect(words).toContain('Print at 100 %');
    // Along two sides of either square.
    for (const side of ['100 mm', '4 in']) expect(words.filter((w) => w === side)).toHaveLength(2);
    expect(words).toContain('cut line');
    expect(words).toContain('stitch line');
    for (const piece of adultCap()) expect(words).toContain(piece.name);
  });

  it('names and numbers every sheet', () => {
    const { length } = set.sheets;
    expect(wordsOf(map!.marks)).toContain(`Map · 1 of ${length}`);
    for (const sheet of pattern)
      expect(wordsOf(sheet.marks)).toEqual(
        expect.arrayContaining([sheet.name, `${sheet.number} of ${length}`, 'Cornet’s cap', '25 mm']),
      );
  });

  it('is empty where there are no pieces, and refuses a paper with problems', () => {
    expect(sheetsOf([], plainPaper, heading).sheets).toEqual([]);
    expect(() => sheetsOf(adultCap(), { ...plainPaper, margin: 500 }, heading)).toThrow(/paper\.margin/);
  });

  it('gives no line to the key that the pattern does not have', () => {
    expect(wordsOf(map!.marks)).not.toContain('fold: lay it on folded cloth');
  });

  it('shows every sheet on the map, and crosses out the blank ones', () => {
    const words = wordsOf(map!.marks);
    for (const sheet of pattern) expect(words).toContain(sheet.name);
    const slanting = map!.marks.filter((m) => m.kind === 'line' && m.path.length === 1 && isSlanting(m.path));
    const rows = Math.max(...pattern.map((s) => s.cell!.row)) + 1;
    const columns = Math.max(...pattern.map((s) => s.cell!.column)) + 1;
    const blanks = rows * columns - pattern.length;
    expect(blanks).toBeGreaterThan(0);
    expect(slanting).toHaveLength(2 * blanks);
    expect(words.filter((w) => w === 'Crossed out: blank')).toHaveLength(1);
  });

  it('prints no sheet without a part of a piece', () => {
    for (const sheet of pattern)
      expect(sheet.marks.some((m) => m.kind === 'line' && m.role === 'cut')).toBe(true);
  });

  it('keeps every text whole, on one sheet, and off the strip that the next sheet will cover', () => {
    const labels = pattern.flatMap((s) => textsOf(s.marks).filter((t) => t.role === 'title' && t.size < 6));
    expect(labels.flatMap((t) => t.lines).sort()).toEqual(
      adultCap()
        .map((p) => p.name)
        .sort(),
    );
    const at = new Map(pattern.map((s) => [s.name, s]));
    for (const sheet of pattern) {
      const right = at.has(sheetName({ row: sheet.cell!.row, column: sheet.cell!.column + 1 }));
      const below = at.has(sheetName({ row: sheet.cell!.row + 1, column: sheet.cell!.column }));
      for (const text of textsOf(sheet.marks)) {
        const { min, max } = textBox(text);
        expect(min.x).toBeGreaterThan(10);
        expect(max.y).toBeLessThan(287);
        expect(max.x).toBeLessThan(right ? 190 : 200);
        expect(min.y).toBeGreaterThan(below ? 20 : 10);
      }
    }
  });

  it('keeps a name without spaces inside the margins, however long', () => {
    for (const cap of ['帽'.repeat(60), '帽'.repeat(120), 'w'.repeat(120)]) {
      const { sheets } = sheetsOf(adultCap(), plainPaper, { ...heading, cap });
      for (const { min, max } of sheets.flatMap(({ marks }) => textsOf(marks).map(textBox)))
        expect(Math.max(10 - min.x, 10 - min.y, max.x - 200, max.y - 287)).toBeLessThan(1e-9);
    }
  });

  it('lets no label stand on its head', () => {
    for (const sheet of pattern)
      for (const { angle } of textsOf(sheet.marks)) {
        const turn = Math.round((angle / Math.PI) * 180) % 360;
        expect([0, 90]).toContain(turn);
      }
  });

  it('names a piece on every sheet that shows a good part of it', () => {
    const bands = sheetsOf([band('band', 'Band')], plainPaper, heading);
    for (const sheet of bands.sheets.slice(1)) expect(wordsOf(sheet.marks)).toContain('Band');
  });

  it('lists a fold in the key where a piece is cut on the fold', () => {
    const half = drawn('half', 'Half', rectangle(90, 120), {
      marks: [{ kind: 'line', role: 'fold', path: [...rectangle(90, 120)].slice(3) }],
    });
    const words = wordsOf(sheetsOf([{ ...half, onFold: true }], plainPaper, heading).sheets[0]!.marks);
    expect(words).toContain('fold: lay it on folded cloth');
    expect(words).toContain('Outer: cut 1, on the fold');
  });

  it('goes on over more first sheets where the list of pieces is long', () => {
    const many = Array.from({ length: 60 }, (_, i) => disc(`d${i}`, `Disc number ${i + 1}`, 20));
    const long = sheetsOf(many, plainPaper, heading);
    const covers = long.sheets.filter((s) => s.cell === null);
    expect(covers.length).toBeGreaterThan(1);
    const words = covers.flatMap((s) => wordsOf(s.marks));
    for (const piece of many) expect(words).toContain(piece.name);
  });

  it('counts rows beyond Z as AA, AB', () => {
    expect(sheetName({ row: 0, column: 0 })).toBe('A1');
    expect(sheetName({ row: 25, column: 9 })).toBe('Z10');
    expect(sheetName({ row: 26, column: 0 })).toBe('AA1');
    expect(sheetName({ row: 27, column: 0 })).toBe('AB1');
  });

  it('keeps a filled mark filled where a join runs through it', () => {
    // A black square, 60 mm, that lies across a join of a piece too wide for one sheet.
    const square = polygon([point(150, 20), point(210, 20), point(210, 80), point(150, 80)]);
    const wide = drawn('wide', 'Wide', rectangle(340, 270), {
      marks: [{ kind: 'line', role: 'notch', filled: true, path: square }],
    });
    const sheets = sheetsOf([wide], { ...plainPaper, join: 'butt' }, heading).sheets.slice(1);
    const areas = sheets.flatMap((s) =>
      s.marks.flatMap((m) => (m.kind === 'line' && m.filled ? [shoelace(flatten(m.path, 0.01))] : [])),
    );
    expect(areas).toHaveLength(2);
    expect(Math.abs(areas[0]! + areas[1]! - 3600)).toBeLessThan(1e-6);
  });
});

/** Neither level nor upright. */
const isSlanting = (path: Path): boolean => {
  const [from, to] = [pathStart(path), pathEnd(path)];
  return Math.min(Math.abs(from.x - to.x), Math.abs(from.y - to.y)) > 0.1;
};

describe('the first sheet', () => {
  it('has its words inside the margins and apart from each other at the widest margin of every paper', () => {
    for (const paper of ['a4', 'letter', 'legal', 'a3', 'tabloid'] as const) {
      const [problem] = paperProblems({ ...plainPaper, paper, margin: 120 });
      for (const overlap of [10, 30]) {
        const spec = { ...plainPaper, paper, overlap, margin: problem!.nearest! };
        const { sheets, page } = sheetsOf(adultCap(), spec, heading);
        const boxes = textsOf(sheets[0]!.marks).map(textBox);
        for (const [i, { min, max }] of boxes.entries()) {
          const out = Math.max(max.x - page.width, max.y - page.height, -min.x, -min.y) + spec.margin;
          expect(out, `${paper}, ${overlap}`).toBeLessThan(1e-9);
          for (const other of boxes.slice(i + 1))
            expect(boxesMeet({ min, max }, other), `${paper}, ${overlap}`).toBe(false);
        }
      }
    }
  });
});

const shoelace = (ring: readonly { x: number; y: number }[]): number =>
  Math.abs(ring.slice(1).reduce((sum, q, i) => sum + ring[i]!.x * q.y - ring[i]!.y * q.x, 0)) / 2;

describe('one page', () => {
  it('is a roll’s width and as long as the pattern, with the squares among the pieces', () => {
    const set = sheetsOf(adultCap(), { ...plainPaper, paper: 'roll-914' }, heading);
    expect(set.sheets).toHaveLength(1);
    expect(set.page.width).toBe(914);
    expect(set.page.height).toBeLessThan(1000);
    expect(wordsOf(set.sheets[0]!.marks)).toContain('Print at 100 %');
    expect(set.problems).toEqual([]);
  });

  it('is refused where a PDF page cannot be so long: 14,400 points, PDF 1.7 annex C', () => {
    const many = Array.from({ length: 120 }, (_, i) => drawn(`p${i}`, `P${i}`, rectangle(560, 50)));
    const set = sheetsOf(many, { ...plainPaper, paper: 'roll-594' }, heading);
    expect(set.page.height).toBeGreaterThan((14400 / 72) * 25.4);
    expect(set.problems.map((p) => p.field)).toEqual(['paper.paper']);
  });
});
