import { beforeAll, describe, expect, it } from 'vitest';
import { fetchStyles } from '../../../src/caps/registry.ts';
import { drawPiece } from '../../../src/drawing/draw-piece.ts';
import { outerRows, rowMarks } from '../../../src/drawing/marks/row.ts';
import { lineStyles } from '../../../src/drawing/roles.ts';
import { boundsOf } from '../../../src/geometry/bounds.ts';
import { contains } from '../../../src/geometry/inside.ts';
import { pathLength, pointAt } from '../../../src/geometry/measure.ts';
import { line, type Path } from '../../../src/geometry/path.ts';
import { point } from '../../../src/geometry/point.ts';
import { rowsOf, withRows } from '../../../src/guide/rows.ts';
import { cutLine } from '../../../src/pattern/cut-line.ts';
import type { Allowances } from '../../../src/pattern/pattern.ts';
import type { Edge, Piece } from '../../../src/pattern/piece.ts';
import { clothsOf, type Written, written } from '../../guide/caps.ts';

/** A wedge 60 wide whose sides rise 4 for each 3 that they lean in: its corners are 53.13°, 53.13° and 73.74°. */
const wedge = ((): Piece => {
  const [a, b, c] = [point(-30, 0), point(30, 0), point(0, 40)];
  const edge = (name: string, path: Path): Edge => ({ name, path, kind: 'gore' });
  return {
    id: 'wedge',
    name: 'Wedge',
    cuts: [{ cloth: 'outer', count: 1 }],
    outline: [edge('bottom', [line(a, b)]), edge('right', [line(b, c)]), edge('left', [line(c, a)])],
    foldable: false,
    grain: [point(0, 5), point(0, 20)],
    notches: [],
    centreLines: [],
    marks: [],
    labelAt: point(0, 10),
    dimensions: [],
    figures: [],
    notes: [],
  };
})();

describe('a row of stitches', () => {
  it('runs beside its edge from corner to corner: it stops where it meets the next edge, or the row along that', () => {
    // A triangle of 3, 4 and 5 twice: the tangent of 53.13° is 4/3 and of half of it 1/2, that of half of 73.74° is 3/4.
    const [alone] = rowMarks(wedge, [{ edge: 'bottom', at: 2 }]);
    expect(pathLength(alone!.path)).toBeCloseTo(60 - 2 * (2 / (4 / 3)), 9);
    const all = ['bottom', 'right', 'left'].map((edge) => ({ edge, at: 2 }));
    const lengths = rowMarks(wedge, all).map(({ path }) => pathLength(path));
    expect(lengths[0]).toBeCloseTo(60 - 2 * (2 / (1 / 2)), 9);
    expect(lengths[1]).toBeCloseTo(50 - 2 / (1 / 2) - 2 / (3 / 4), 9);
    // Out in the allowance it is as long as its edge.
    const [outside] = rowMarks(wedge, [{ edge: 'bottom', at: -2 }]);
    expect(pathLength(outside!.path)).toBeCloseTo(60, 9);
    expect(boundsOf(outside!.path).max.y).toBeCloseTo(-2, 9);
  });

  it('has a look of its own: it is no cut line, no stitch line and no edge of a sheet', () => {
    const looks = Object.entries(lineStyles).filter(([role]) => role !== 'row');
    const { weight, dash } = lineStyles.row;
    expect(dash.length).toBeGreaterThan(0);
    for (const [role, style] of looks)
      expect(`${style.weight} ${style.dash}`, role).not.toBe(`${weight} ${dash}`);
    // Told from the stitch line by its dash alone, in black and white.
    expect(dash.length).not.toBe(lineStyles.stitch.dash.length);
  });

  it('is drawn for the nearest and the farthest of many along one edge', () => {
    const rows = [6, 13, 20, 27].map((at) => ({ edge: 'bottom', at }));
    expect(outerRows([...rows, { edge: 'left', at: 2 }]).map(({ at }) => at)).toEqual([6, 27, 2]);
  });
});

describe('the rows of every style', () => {
  let caps: readonly Written[] = [];
  beforeAll(async () => {
    const all = await fetchStyles();
    const cloths = [clothsOf({}), clothsOf({ outer: 'denim', stiffener: 'buckram' })];
    caps = all.flatMap((style) => cloths.flatMap((set) => written(style, {}, set) ?? []));
  }, 60_000);

  const rowed = ({ work }: Written): readonly Piece[] => withRows(work.pattern.pieces, rowsOf(work));

  it('stay on their pieces: inside the stitch line, or between it and the cut line', () => {
    const wrong: string[] = [];
    for (const cap of caps) {
      for (const piece of rowed(cap)) {
        const stitch = piece.outline.flatMap(({ path }) => path);
        const cut = cutLine(piece, cap.work.pattern.allowances).flat();
        for (const row of piece.rows ?? []) {
          for (const { path } of rowMarks(piece, [row])) {
            const at = [0.02, 0.1, 0.3, 0.5, 0.7, 0.9, 0.98].map((part) =>
              pointAt(path, part * pathLength(path)),
            );
            const inside = at.every((p) => contains(stitch, p));
            const outside = at.every((p) => contains(cut, p) && !contains(stitch, p));
            if (row.at > 0 ? !inside : row.at < 0 && !outside)
              wrong.push(`${cap.name}, ${piece.id}.${row.edge}`);
          }
        }
      }
    }
    expect(wrong).toEqual([]);
  });

  it('are on the shell of every style, and beside the stiffener of every visor', () => {
    for (const cap of caps) {
      const rows = rowsOf(cap.work);
      expect(rows.length, cap.name).toBeGreaterThan(0);
      const visored = cap.work.pattern.pieces.some(({ id }) => id === 'visor');
      const beside = rows.filter(({ piece, edge }) => piece === 'visor' && edge === 'inner');
      expect(beside.length, cap.name).toBe(visored ? 1 : 0);
      expect(rows.filter(({ piece }) => piece.startsWith('lining'))).toEqual([]);
    }
  });

  it('are drawn with the piece, whole or on the fold, and the visor says that the wheel is turned by hand there', () => {
    const cap = caps.find(({ style }) => style.id === 'flat-top')!;
    const label = { cap: 'Canal band cap', wearer: 'Cornet', finishedGirth: 560, date: '2026-11-25' };
    const drawn = (id: string, halves: boolean, allowances: Allowances = cap.work.pattern.allowances) => {
      const piece = rowed(cap).find((one) => one.id === id)!;
      return drawPiece(piece, allowances, { unit: 'cm', halves, dimensions: false, label }).marks;
    };
    const length = (halves: boolean): number =>
      drawn('band', halves).reduce(
        (sum, mark) => (mark.kind === 'line' && mark.role === 'row' ? sum + pathLength(mark.path) : sum),
        0,
      );
    expect(length(false)).toBeGreaterThan(1000);
    expect(length(true)).toBeCloseTo(length(false) / 2, 6);
    const said = drawn('visor', false).flatMap((mark) => (mark.kind === 'text' ? mark.lines : []));
    expect(said.join(' ')).toMatch(/half a presser foot.*wheel by hand/);
  });
});
