import { beforeAll, describe, expect, it } from 'vitest';
import { defaultSpec } from '../../src/design/default-spec.ts';
import { drawPattern } from '../../src/drawing/draw-piece.ts';
import type { LineRole, PieceDrawing } from '../../src/drawing/drawing.ts';
import { lineStyles } from '../../src/drawing/roles.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import type { PaperSpec } from '../../src/print/paper.ts';
import { writePdf } from '../../src/print/pdf.ts';
import type { SheetSet } from '../../src/print/sheet.ts';
import { sheetsOf } from '../../src/print/sheets.ts';
import { derive } from '../design/derive.ts';
import { natives } from '../house/natives.ts';
import { fonts } from '../print/fonts.ts';
import { adultCap, heading, plainPaper } from '../print/samples.ts';
import { CHORDS, type ReadPage, type ReadPath, type ReadPdf, readPdf, type XY } from './pdf-reader.ts';

/*
 * The printed sheets, read back from the PDF by pdf.js and put together by arithmetic that stands here alone: paper
 * sizes from ISO 216 and ANSI/ASME Y14.1, the pitch from margin and overlap. Bounds are those of the design: 0.01 mm
 * for a test square, 0.05 mm for a line.
 */

const sizes: Readonly<Record<string, readonly [number, number]>> = { a4: [210, 297], letter: [215.9, 279.4] };

/** The demo's cap as the program drafts it, its symmetric pieces whole or as halves on the fold. */
const draftedCap = (halves: boolean): readonly PieceDrawing[] => {
  const { draft } = derive(defaultSpec);
  return drawPattern(draft!.pattern, { unit: 'cm', halves, dimensions: false, label: heading });
};

const cases: readonly (readonly [string, () => readonly PieceDrawing[], Partial<PaperSpec>])[] = [
  ['the demo cap, whole, on A4 upright, overlapped', () => draftedCap(false), {}],
  [
    'the demo cap, folded, on Letter upright, butted, on a printer that draws small',
    () => draftedCap(true),
    { paper: 'letter', join: 'butt', halves: true, measuredAcross: 97.5, measuredDown: 98.75 },
  ],
  [
    'the demo cap, folded, on A4 across, butted',
    () => draftedCap(true),
    { orientation: 'landscape', join: 'butt', halves: true },
  ],
  [
    'eleven simple shapes on Letter across, overlapped by 15 mm',
    adultCap,
    { paper: 'letter', orientation: 'landscape', overlap: 15 },
  ],
  [
    'eleven simple shapes on A4 upright with a margin of 6 mm, on a printer that draws large',
    adultCap,
    { margin: 6, measuredAcross: 101.5, measuredDown: 100.5 },
  ],
];

// Nothing that the language comes with has a prototype, as every function written in it has.
it.each(natives.map(([of, name]) => [name, of] as const))('its reader leaves %s as it was', (name, of) => {
  expect(Object.hasOwn(Reflect.get(of, name), 'prototype')).toBe(false);
});

describe.each(cases)('%s', (_, pieces, change) => {
  const paper: PaperSpec = { ...plainPaper, ...change };
  let set: SheetSet;
  let pdf: ReadPdf;
  beforeAll(async () => {
    set = sheetsOf(pieces(), paper, heading);
    pdf = await readPdf(await writePdf(set, fonts));
  });

  /** What the printer makes of a place on the page, mm from the corner of the margins: it is off by what was measured. */
  const printed = ({ x, y }: XY): XY => ({
    x: ((x - paper.margin) * paper.measuredAcross) / 100,
    y: ((y - paper.margin) * paper.measuredDown) / 100,
  });

  it('has a page of the paper’s size for every sheet', () => {
    const [short, long] = sizes[paper.paper]!;
    const [width, height] = paper.orientation === 'portrait' ? [short, long] : [long, short];
    expect(pdf.pages).toHaveLength(set.sheets.length);
    for (const page of pdf.pages) {
      expect(Math.abs(page.width - width)).toBeLessThan(0.001);
      expect(Math.abs(page.height - height)).toBeLessThan(0.001);
    }
  });

  it('prints both test squares true', () => {
    const squares = pdf.pages[0]!.paths.map((path) => extent(path.points.map(printed))).filter(
      ({ width, height }) => width > 95 && width < 105 && height > 95 && height < 105,
    );
    const sides = squares.flatMap(({ width, height }) => [width, height]).sort((a, b) => a - b);
    expect(sides).toHaveLength(4);
    for (const side of sides.slice(0, 2)) expect(Math.abs(side - 100)).toBeLessThan(0.01);
    for (const side of sides.slice(2)) expect(Math.abs(side - 101.6)).toBeLessThan(0.01);
  });

  it('prints a small cross on every sheet of the pattern, 25 mm both ways', () => {
    for (const page of pdf.pages.slice(1)) {
      const arms = page.paths
        .filter((path) => path.painted === 'stroke' && path.points.length === 2 && !path.dashed)
        .map((path) => extent(path.points.map(printed)));
      expect(arms.some(({ width, height }) => Math.abs(width - 25) < 0.01 && height < 0.001)).toBe(true);
      expect(arms.some(({ width, height }) => Math.abs(height - 25) < 0.01 && width < 0.001)).toBe(true);
    }
  });

  it('draws nothing outside the margins', () => {
    for (const page of pdf.pages) {
      const points = [...page.paths.flatMap((p) => p.points), ...page.texts.flatMap((t) => t.corners)];
      expect(points.length).toBeGreaterThan(20);
      const { min, max } = extent(points);
      expect(min.x).toBeGreaterThan(paper.margin - 0.001);
      expect(min.y).toBeGreaterThan(paper.margin - 0.001);
      expect(max.x).toBeLessThan(page.width - paper.margin + 0.001);
      expect(max.y).toBeLessThan(page.height - paper.margin + 0.001);
    }
  });

  it('clips each page at its margins, so that no half of a line’s weight leaves them', () => {
    for (const page of pdf.pages) {
      const [clip] = page.paths.filter((path) => path.painted === 'clip');
      const { min, max } = extent(clip!.points);
      for (const [is, is2] of [
        [min.x, paper.margin],
        [min.y, paper.margin],
        [max.x, page.width - paper.margin],
        [max.y, page.height - paper.margin],
      ] as const)
        expect(Math.abs(is - is2)).toBeLessThan(0.001);
    }
  });

  it('names every sheet by row and column, and says how many there are', () => {
    const names = pdf.pages.slice(1).map(nameOf);
    expect(names).toEqual(set.sheets.slice(1).map((s) => s.name));
    expect(new Set(names).size).toBe(names.length);
    for (const [i, page] of pdf.pages.entries())
      if (i > 0) expect(page.texts.map((t) => t.text)).toContain(`${i + 1} of ${pdf.pages.length}`);
    const onMap = pdf.pages[0]!.texts.map((t) => t.text);
    for (const name of names) expect(onMap).toContain(name);
  });

  /** The lines of a role on all sheets, where they come to lie when the sheets are joined. */
  const joined = (role: LineRole): readonly (readonly XY[])[] => {
    const shared = paper.join === 'overlap' ? paper.overlap : 0;
    const window = extentOf(paper);
    return pdf.pages.slice(1).flatMap((page) => {
      const [, letter, number] = /^([A-Z])(\d+)$/.exec(nameOf(page))!;
      const left = (Number(number) - 1) * (window.width - shared);
      const top = -(letter!.charCodeAt(0) - 65) * (window.height - shared);
      return page.paths
        .filter((path) => isDrawnAs(role, path, set.scale))
        .map((path) =>
          path.points.map(printed).map(({ x, y }) => ({ x: left + x, y: top - window.height + y })),
        );
    });
  };

  it.each(['cut', 'stitch', 'fold'] as const)(
    'rebuilds every %s line within 0.05 mm from its sheets',
    (role) => {
      const lines = joined(role);
      const drawn = set.pieces.flatMap((piece) =>
        piece.marks.flatMap((m) => (m.kind === 'line' && m.role === role ? [flatten(m.path, 0.002)] : [])),
      );
      expect(drawn.length > 0).toBe(role !== 'fold' || paper.halves);
      // Every point of every line is on some sheet.
      const near = segmentFinder(lines);
      const missing = Math.max(0, ...drawn.flatMap(dense).map(near));
      expect(missing).toBeLessThan(0.05);
      // And nothing is on a sheet that is not drawn.
      const nearDrawn = segmentFinder(drawn);
      const astray = Math.max(0, ...lines.flat().map(nearDrawn));
      expect(astray).toBeLessThan(0.05);
    },
  );

  it('keeps curves as curves', () => {
    const cut = pdf.pages
      .slice(1)
      .flatMap((page) => page.paths.filter((p) => isDrawnAs('cut', p, set.scale)));
    expect(cut.some((path) => path.curves > 0)).toBe(true);
    // A tip of 111 mm radius in chords within 0.05 mm would take over a hundred.
    expect(Math.max(...cut.map((path) => path.points.length - 1 - CHORDS * path.curves))).toBeLessThan(20);
  });

  it('lays joining marks of neighbouring sheets on each other', () => {
    const shared = paper.join === 'overlap' ? paper.overlap : 0;
    const byName = new Map(set.sheets.map((s) => [s.name, s]));
    let pairs = 0;
    for (const sheet of set.sheets) {
      if (sheet.cell === null) continue;
      const right = byName.get(`${sheet.name[0]}${sheet.cell.column + 2}`);
      const below = byName.get(
        `${String.fromCharCode(sheet.name.charCodeAt(0) + 1)}${sheet.cell.column + 1}`,
      );
      const page = pdf.pages[sheet.number - 1]!;
      for (const [other, name] of [
        [right, right?.name],
        [below, below?.name],
      ] as const) {
        if (other === undefined) continue;
        const theirs = pdf.pages[other.number - 1]!;
        const step = {
          x: (other.cell!.column - sheet.cell.column) * (extentOf(paper).width - shared),
          y: -(other.cell!.row - sheet.cell.row) * (extentOf(paper).height - shared),
        };
        const centres = theirs.paths
          .filter((path) => isJoinMark(path, set.scale))
          .map((path) => path.points.map(printed))
          .map((points) => ({ x: points[0]!.x + step.x, y: points[0]!.y + step.y }));
        // The first corner of a mark lies on the join line in both sheets.
        const mine = page.paths
          .filter((path) => isJoinMark(path, set.scale))
          .map((path) => printed(path.points[0]!));
        const met = mine.filter((p) => centres.some((q) => Math.hypot(p.x - q.x, p.y - q.y) < 0.01));
        expect(met, `${sheet.name} to ${name}`).toHaveLength(2);
        pairs++;
        expect(page.texts.map((t) => t.text)).toContain(name);
        expect(theirs.texts.map((t) => t.text)).toContain(sheet.name);
      }
    }
    expect(pairs).toBeGreaterThan(3);
  });
});

const extentOf = (paper: PaperSpec): { readonly width: number; readonly height: number } => {
  const [short, long] = sizes[paper.paper]!;
  const [width, height] = paper.orientation === 'portrait' ? [short, long] : [long, short];
  return {
    width: ((width - 2 * paper.margin) * paper.measuredAcross) / 100,
    height: ((height - 2 * paper.margin) * paper.measuredDown) / 100,
  };
};

/** Told by weight and dash, as on paper. The weight is stretched with everything else. */
const isDrawnAs = (role: LineRole, path: ReadPath, scale: SheetSet['scale']): boolean => {
  const { weight, dash } = lineStyles[role];
  const stretched = weight * Math.sqrt(scale.across * scale.up);
  return (
    path.painted === 'stroke' && path.dashed === dash.length > 0 && Math.abs(path.weight - stretched) < 0.002
  );
};
const isJoinMark = (path: ReadPath, scale: SheetSet['scale']): boolean =>
  isDrawnAs('join', path, scale) && path.points.length !== 2;

/** A sheet's own name is set larger than its neighbours'. */
const nameOf = (page: ReadPage): string => {
  const names = page.texts.filter((t) => /^[A-Z]\d+$/.test(t.text)).sort((a, b) => b.size - a.size);
  expect(names[0]!.size).toBeGreaterThan(1.5 * (names[1]?.size ?? 0));
  return names[0]!.text;
};

const extent = (points: readonly XY[]) => {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y } of points) {
    [x0, y0, x1, y1] = [Math.min(x0, x), Math.min(y0, y), Math.max(x1, x), Math.max(y1, y)];
  }
  return { min: { x: x0, y: y0 }, max: { x: x1, y: y1 }, width: x1 - x0, height: y1 - y0 };
};

/** Points no more than 1 mm apart along a chain. */
const dense = (chain: readonly XY[]): readonly XY[] =>
  chain.slice(1).flatMap((to, i) => {
    const from = chain[i]!;
    const count = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y)));
    return Array.from({ length: count }, (_, k) => ({
      x: from.x + ((to.x - from.x) * k) / count,
      y: from.y + ((to.y - from.y) * k) / count,
    }));
  });

/** The distance from a point to the nearest of many chains, looked up in squares of 8 mm. */
const segmentFinder = (chains: readonly (readonly XY[])[]): ((p: XY) => number) => {
  const grid = new Map<string, (readonly [XY, XY])[]>();
  const key = (x: number, y: number): string => `${Math.floor(x / 8)},${Math.floor(y / 8)}`;
  for (const chain of chains)
    for (let i = 1; i < chain.length; i++) {
      const pair = [chain[i - 1]!, chain[i]!] as const;
      const keys = new Set(
        dense(pair)
          .concat(pair[1])
          .map(({ x, y }) => key(x, y)),
      );
      for (const k of keys) grid.set(k, [...(grid.get(k) ?? []), pair]);
    }
  return (p) => {
    let best = Infinity;
    for (const dx of [-1, 0, 1])
      for (const dy of [-1, 0, 1])
        for (const [a, b] of grid.get(key(p.x + 8 * dx, p.y + 8 * dy)) ?? []) {
          const [ux, uy] = [b.x - a.x, b.y - a.y];
          const t = ((p.x - a.x) * ux + (p.y - a.y) * uy) / (ux * ux + uy * uy);
          const s = Math.min(1, Math.max(0, Number.isNaN(t) ? 0 : t));
          best = Math.min(best, Math.hypot(a.x + s * ux - p.x, a.y + s * uy - p.y));
        }
    return best;
  };
};
