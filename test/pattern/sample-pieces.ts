import { reversed } from '../../src/geometry/measure.ts';
import { arc, circle, cubic, line, type Path } from '../../src/geometry/path.ts';
import { point } from '../../src/geometry/point.ts';
import { ringSector } from '../../src/geometry/ring-sector.ts';
import type { Allowances } from '../../src/pattern/pattern.ts';
import type { Piece } from '../../src/pattern/piece.ts';

/** Simple pieces made by hand: not a draft, only the shapes that a cap is made of. */
const piece = (
  from: Pick<Piece, 'id' | 'name' | 'cuts' | 'outline' | 'labelAt'> & Partial<Piece>,
): Piece => ({
  foldable: true,
  grain: [point(20, -10), point(20, 10)],
  notches: [],
  centreLines: [],
  marks: [],
  dimensions: [],
  figures: [],
  notes: [],
  ...from,
});

export const allowances: Allowances = {
  crown: 6.35,
  gore: 6.35,
  side: 10,
  band: 8,
  lower: 12,
  visorEdge: 5,
  brimEdge: 5,
  strapEdge: 5,
  hem: 15,
  none: 0,
};

export const even = (width: number): Allowances => ({
  crown: width,
  gore: width,
  side: width,
  band: width,
  lower: width,
  visorEdge: width,
  brimEdge: width,
  strapEdge: width,
  hem: width,
  none: 0,
});

/** A disc whose one edge starts at the back, on the fold. */
export const disc = (r: number): Piece => {
  const rim: Path = [arc(point(0, 0), point(0, -r), 2 * Math.PI)];
  const girth = 2 * Math.PI * r;
  return piece({
    id: 'tip',
    name: 'Tip',
    cuts: [{ cloth: 'outer', count: 1 }],
    outline: [{ name: 'rim', path: rim, kind: 'crown' }],
    labelAt: point(0, r * 0.1),
    grain: [point(r * 0.6, -r * 0.4), point(r * 0.6, r * 0.4)],
    notches: [
      { edge: 'rim', at: 0, count: 2, name: 'centre back' },
      { edge: 'rim', at: girth / 4, count: 1, name: 'side' },
      { edge: 'rim', at: girth / 2, count: 1, name: 'centre front' },
      { edge: 'rim', at: (girth * 3) / 4, count: 1, name: 'side' },
    ],
    centreLines: [[line(point(0, -r), point(0, r))], [line(point(-r, 0), point(r, 0))]],
    dimensions: [{ name: 'Diameter', along: [line(point(-r, 0), point(r, 0))] }],
  });
};

/** The same disc with its edge started at the wearer's left, away from the fold. */
export const discFromTheSide = (r: number): Piece => ({
  ...disc(r),
  outline: [{ name: 'rim', path: circle(point(0, 0), r), kind: 'crown' }],
  notches: [
    { edge: 'rim', at: (Math.PI * r) / 4, count: 1, name: 'eighth' },
    { edge: 'rim', at: (Math.PI * r) / 2, count: 1, name: 'centre front' },
    { edge: 'rim', at: (Math.PI * r * 7) / 4, count: 1, name: 'other eighth' },
  ],
});

export const sector = (bottom: number, top: number, height: number): Piece => {
  const shape = ringSector(bottom, top, height);
  return piece({
    id: 'sideBand',
    name: 'Side band',
    cuts: [{ cloth: 'outer', count: 4, mirrored: 2 }],
    outline: [
      { name: 'bottom', path: shape.bottom, kind: 'band' },
      { name: 'right', path: shape.right, kind: 'side' },
      { name: 'top', path: shape.top, kind: 'crown' },
      { name: 'left', path: shape.left, kind: 'side' },
    ],
    labelAt: point(15, height / 2),
    grain: [point(-bottom * 0.3, height * 0.2), point(-bottom * 0.3, height * 0.8)],
    centreLines: [[line(point(0, 0), point(0, height))]],
    dimensions: [{ name: 'Height', along: shape.right }],
  });
};

export const strip = (length: number, height: number, more: Partial<Piece> = {}): Piece => {
  const x = length / 2;
  const [a, b, c, d] = [point(-x, 0), point(x, 0), point(x, height), point(-x, height)] as const;
  return piece({
    id: 'band',
    name: 'Band',
    cuts: [{ cloth: 'outer', count: 1 }],
    outline: [
      { name: 'bottom', path: [line(a, b)], kind: 'lower' },
      { name: 'right', path: [line(b, c)], kind: 'side' },
      { name: 'top', path: [line(c, d)], kind: 'band' },
      { name: 'left', path: [line(d, a)], kind: 'side' },
    ],
    labelAt: point(length * 0.3, height / 2),
    grain: [point(-20, height / 2), point(20, height / 2)],
    ...more,
  });
};

/** A visor: an inner and an outer edge of cubics, the front downwards, meeting at two tips. */
export const crescent = (width: number, bow: number, depth: number): Piece => {
  const [a, b] = [point(-width / 2, 0), point(width / 2, 0)];
  const inner = cubic(a, point(-width / 4, (-bow * 4) / 3), point(width / 4, (-bow * 4) / 3), b);
  const low = (-(bow + depth) * 4) / 3;
  const outer = cubic(a, point(-width * 0.42, low), point(width * 0.42, low), b);
  return piece({
    id: 'visor',
    name: 'Visor',
    cuts: [{ cloth: 'outer', count: 2 }],
    outline: [
      { name: 'outer', path: [outer], kind: 'visorEdge' },
      { name: 'inner', path: reversed([inner]), kind: 'lower' },
    ],
    labelAt: point(20, -bow - depth / 2),
    grain: [point(-30, -bow - depth * 0.7), point(-30, -bow - depth * 0.3)],
    centreLines: [[line(point(0, -bow), point(0, -bow - depth))]],
    dimensions: [{ name: 'Depth', along: [line(point(0, -bow), point(0, -bow - depth))] }],
  });
};

export const withoutAllowance = (from: Piece): Piece => ({
  ...from,
  outline: from.outline.map((edge) => ({ ...edge, kind: 'none' })),
});

export const samplePieces: readonly Piece[] = [
  disc(105),
  sector(139.7, 165.1, 63.5),
  strip(558.8, 38),
  crescent(190, 40, 55),
];
