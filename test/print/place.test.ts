import { areaPathsD, EndType, FillRule, inflatePathsD, intersectD, JoinType, type PathD } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PieceDrawing } from '../../src/drawing/drawing.ts';
import { areaOf } from '../../src/geometry/area.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { pathLength, pointAt } from '../../src/geometry/measure.ts';
import { polygon } from '../../src/geometry/path.ts';
import { point } from '../../src/geometry/point.ts';
import type { PaperSpec } from '../../src/print/paper.ts';
import { placePieces } from '../../src/print/place.ts';
import { sheetGrid, windowOf } from '../../src/print/sheet-grid.ts';
import { adultCap, band, crescent, disc, drawn, plainPaper, rectangle, sector } from './samples.ts';

/** Common practice: room for scissors between pieces. */
const APART = 4;

const ringOf = (piece: PieceDrawing): PathD =>
  flatten(piece.silhouette, 0.02)
    .slice(0, -1)
    .map(({ x, y }) => ({ x, y }));

/** Area (mm²) that two pieces share once each is grown by almost half of what must be free between them. */
const crowding = (a: PieceDrawing, b: PieceDrawing): number => {
  const grown = [a, b].map((p) =>
    inflatePathsD([ringOf(p)], APART / 2 - 0.1, JoinType.Round, EndType.Polygon),
  );
  return Math.abs(areaPathsD(intersectD(grown[0]!, grown[1]!, FillRule.NonZero)));
};

const worstCrowding = (pieces: readonly PieceDrawing[]): number =>
  Math.max(0, ...pieces.flatMap((a, i) => pieces.slice(i + 1).map((b) => crowding(a, b))));

/** The naive count, worked out here: rows as the pieces come, the best row width, ceil((L - o) / (p - o)) both ways. */
const naiveCount = (pieces: readonly PieceDrawing[], paper: PaperSpec): number => {
  const { window, pitch } = sheetGrid(paper);
  const shared = [window.width - pitch.width, window.height - pitch.height] as const;
  const sizes = pieces.map(({ bounds: { min, max } }) => [max.x - min.x, max.y - min.y] as const);
  const counts: number[] = [];
  for (let columns = 1; columns <= 60; columns++) {
    const limit = columns * pitch.width + shared[0];
    if (sizes.some(([w]) => w > limit)) continue;
    let [x, top, tall, wide] = [0, 0, 0, 0];
    for (const [w, h] of sizes) {
      if (x > 0 && x + w > limit) [x, top, tall] = [0, top + tall + APART, 0];
      wide = Math.max(wide, x + w);
      tall = Math.max(tall, h);
      x += w + APART;
    }
    const across = Math.ceil((wide - shared[0]) / pitch.width - 1e-9);
    const down = Math.ceil((top + tall - shared[1]) / pitch.height - 1e-9);
    counts.push(Math.max(1, across) * Math.max(1, down));
  }
  return Math.min(...counts);
};

describe('sheets without any thought given to placing', () => {
  // Trade formula ceil((W-o)/(p-o)) x ceil((H-o)/(q-o)); both counts published with it.
  const large = drawn('large', 'Large', rectangle(900, 600));
  it('are 15 of A4 for 900 by 600 mm, with 10 mm margins and 10 mm overlap', () => {
    expect(placePieces([large], sheetGrid(plainPaper)).naiveSheets).toBe(15);
  });
  it('are 8 of A3', () => {
    expect(placePieces([large], sheetGrid({ ...plainPaper, paper: 'a3' })).naiveSheets).toBe(8);
  });
});

describe('placing an adult cap', () => {
  const cap = adultCap();
  const placed = placePieces(cap, sheetGrid(plainPaper));

  it('saves sheets over rows', () => {
    expect(placed.naiveSheets).toBe(naiveCount(cap, plainPaper));
    expect(placed.cells.length).toBeLessThan(placed.naiveSheets);
    // No fewer than the pieces' area takes.
    const area = cap.reduce((sum, p) => sum + Math.abs(areaOf(p.silhouette)), 0);
    expect(placed.cells.length * 190 * 277).toBeGreaterThan(area);
  });

  it('keeps pieces 4 mm apart, by an independent polygon library', () => {
    expect(worstCrowding(placed.pieces)).toBe(0);
    // The check can fail: the same piece twice in one place.
    expect(crowding(placed.pieces[0]!, placed.pieces[0]!)).toBeGreaterThan(1000);
  });

  it('moves pieces and turns them by quarters, and does nothing else to them', () => {
    for (const [i, piece] of placed.pieces.entries()) {
      const [before, after] = [cap[i]!.silhouette, piece.silhouette];
      expect(piece.id).toBe(cap[i]!.id);
      const length = pathLength(before);
      const [p, q] = [before, after].map((path) => (share: number) => pointAt(path, share * length));
      const turns = new Set<number>();
      for (const share of [0.13, 0.37, 0.71, 0.94]) {
        const from = { x: p!(share).x - p!(0).x, y: p!(share).y - p!(0).y };
        const to = { x: q!(share).x - q!(0).x, y: q!(share).y - q!(0).y };
        expect(Math.abs(Math.hypot(from.x, from.y) - Math.hypot(to.x, to.y))).toBeLessThan(1e-6);
        const turn = (Math.atan2(to.y, to.x) - Math.atan2(from.y, from.x)) / (Math.PI / 2);
        expect(Math.abs(turn - Math.round(turn))).toBeLessThan(1e-6);
        turns.add((Math.round(turn) + 8) % 4);
      }
      expect(turns.size).toBe(1);
      // Not mirrored.
      expect(Math.sign(areaOf(after))).toBe(Math.sign(areaOf(before)));
    }
  });

  it('leaves no piece on sheets that meet at a corner alone', () => {
    const grid = sheetGrid(plainPaper);
    const size = fc.integer({ min: 150, max: 600 });
    fc.assert(
      fc.property(size, size, fc.integer({ min: 2, max: 12 }), (width, height, thick) => {
        const slant = polygon([
          point(0, height),
          point(0, height - thick),
          point(width - thick, 0),
          point(width, 0),
          point(width, thick),
          point(thick, height),
        ]);
        const { cells } = placePieces([drawn('slant', 'Slant', slant)], grid);
        const reached = new Set(cells.slice(0, 1));
        for (const from of reached)
          for (const to of cells)
            if (Math.abs(from.row - to.row) + Math.abs(from.column - to.column) === 1) reached.add(to);
        expect(reached.size).toBe(cells.length);
      }),
      { numRuns: 30, examples: [[486, 371, 2]] },
    );
  });

  it('gives the same answer to the same question', () => {
    expect(placePieces(adultCap(), sheetGrid(plainPaper))).toEqual(placed);
  });

  it('does not split what fits on one sheet, where no sheet is saved by it', () => {
    const grid = sheetGrid(plainPaper);
    // Two discs of 160 mm fit one below the other on two sheets only: in rows the second would lie across the join.
    const { pieces, cells } = placePieces([disc('a', 'A', 80), disc('b', 'B', 80)], grid);
    expect(cells).toHaveLength(2);
    for (const piece of pieces) {
      const whole = cells.some((cell) => {
        const { min, max } = windowOf(grid, cell);
        const { bounds: b } = piece;
        return b.min.x >= min.x && b.max.x <= max.x && b.min.y >= min.y && b.max.y <= max.y;
      });
      expect(whole).toBe(true);
    }
  });

  it('lays a 560 mm band over three A4 sheets one below the other, not over four side by side', () => {
    // ceil((560 - 10) / 267) = 3 down; ceil((560 - 10) / 180) = 4 across.
    const { cells } = placePieces([band('band', 'Band', 560, 50)], sheetGrid(plainPaper));
    expect(cells).toEqual([
      { row: 0, column: 0 },
      { row: 1, column: 0 },
      { row: 2, column: 0 },
    ]);
  });
});

describe('placing on endless paper', () => {
  it('keeps a roll to its width and one sheet, and makes it no longer than the pieces below each other', () => {
    const cap = adultCap();
    const { pieces, cells, grid } = placePieces(cap, sheetGrid({ ...plainPaper, paper: 'roll-914' }));
    expect(cells).toHaveLength(1);
    for (const { bounds } of pieces) {
      expect(bounds.min.x).toBeGreaterThanOrEqual(-1e-9);
      expect(bounds.max.x).toBeLessThanOrEqual(894 + 1e-9);
      expect(bounds.max.y).toBeLessThanOrEqual(1e-9);
      expect(bounds.min.y).toBeGreaterThanOrEqual(-grid.window.height - 1e-9);
    }
    expect(worstCrowding(pieces)).toBe(0);
    const area = cap.reduce((sum, p) => sum + Math.abs(areaOf(p.silhouette)), 0);
    expect(grid.window.height * 894).toBeLessThan(2.2 * area);
  });

  it('makes one page as large as the pattern', () => {
    const { pieces, cells, grid } = placePieces(adultCap(), sheetGrid({ ...plainPaper, paper: 'one-page' }));
    expect(cells).toHaveLength(1);
    const xs = pieces.flatMap(({ bounds }) => [bounds.min.x, bounds.max.x]);
    const ys = pieces.flatMap(({ bounds }) => [bounds.min.y, bounds.max.y]);
    expect(Math.min(...xs)).toBeGreaterThanOrEqual(-1e-9);
    expect(Math.abs(Math.max(...xs) - grid.window.width)).toBeLessThan(4);
    expect(Math.abs(Math.min(...ys) + grid.window.height)).toBeLessThan(4);
    expect(worstCrowding(pieces)).toBe(0);
  });
});

describe('placing any pieces', () => {
  const size = (low: number, high: number) => fc.integer({ min: low, max: high });
  const piece = fc.oneof(
    size(15, 150).map((r) => disc(`disc ${r}`, 'Disc', r)),
    fc
      .tuple(size(20, 700), size(15, 200))
      .map(([w, h]) => drawn(`${w} by ${h}`, 'Rectangle', rectangle(w, h))),
    fc
      .tuple(size(30, 300), size(20, 120), size(3, 25))
      .map(([r, wide, a]) => drawn(`sector ${r} ${wide} ${a}`, 'Sector', sector(r, r + wide, a / 10))),
    fc
      .tuple(size(80, 260), size(10, 50), size(25, 80))
      .map(([w, bow, depth]) => drawn(`crescent ${w} ${bow} ${depth}`, 'Crescent', crescent(w, bow, depth))),
  );
  const paper = fc.record({
    paper: fc.constantFrom('a4', 'letter', 'a3', 'legal', 'tabloid'),
    orientation: fc.constantFrom('portrait', 'landscape'),
    join: fc.constantFrom('overlap', 'butt'),
    margin: size(4, 14),
    overlap: size(5, 20),
    measuredAcross: size(97, 103),
    measuredDown: size(97, 103),
  }) as fc.Arbitrary<Partial<PaperSpec>>;

  it('never takes more sheets than rows do, never lays pieces on each other, and leaves nothing off the sheets', () => {
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 7 }), paper, (pieces, change) => {
        const spec: PaperSpec = { ...plainPaper, ...change };
        const grid = sheetGrid(spec);
        const placed = placePieces(pieces, grid);
        expect(placed.cells.length).toBeLessThanOrEqual(naiveCount(pieces, spec));
        expect(worstCrowding(placed.pieces)).toBe(0);
        const windows = placed.cells.map((cell) => windowOf(grid, cell));
        for (const p of placed.pieces)
          for (const { x, y } of flatten(p.silhouette, 0.5)) {
            const shown = windows.some(
              ({ min, max }) =>
                x >= min.x - 1e-6 && x <= max.x + 1e-6 && y >= min.y - 1e-6 && y <= max.y + 1e-6,
            );
            if (!shown) expect(shown).toBe(true);
          }
      }),
      { numRuns: 30 },
    );
  });

  it('is content with no pieces', () => {
    expect(placePieces([], sheetGrid(plainPaper)).cells).toEqual([]);
  });
});
