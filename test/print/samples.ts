import { defaultSpec } from '../../src/design/default-spec.ts';
import type { Mark, PieceDrawing } from '../../src/drawing/drawing.ts';
import { boundsOf } from '../../src/geometry/bounds.ts';
import { reversed } from '../../src/geometry/measure.ts';
import { arc, circle, cubic, line, type Path, pathEnd, polygon } from '../../src/geometry/path.ts';
import { type Point, point } from '../../src/geometry/point.ts';
import type { PaperSpec } from '../../src/print/paper.ts';
import type { Heading } from '../../src/print/sheet.ts';

/** A drawn piece with its cut line, a stitch line where one is given, a grainline and a label. */
export const drawn = (
  id: string,
  name: string,
  silhouette: Path,
  more: { readonly stitch?: Path; readonly at?: Point; readonly marks?: readonly Mark[] } = {},
): PieceDrawing => {
  const bounds = boundsOf(silhouette);
  const at = more.at ?? point((bounds.min.x + bounds.max.x) / 2, (bounds.min.y + bounds.max.y) / 2);
  const marks: Mark[] = [
    { kind: 'line', role: 'cut', path: silhouette },
    ...(more.stitch ? [{ kind: 'line', role: 'stitch', path: more.stitch } as const] : []),
    {
      kind: 'text',
      role: 'title',
      at: point(at.x - 18, at.y + 3),
      lines: [name],
      size: 4.9,
      align: 'start',
      angle: 0,
    },
    {
      kind: 'text',
      role: 'label',
      at: point(at.x - 18, at.y - 4),
      lines: ['Cornet’s cap · For Cornet', 'Outer: cut 1'],
      size: 3.5,
      align: 'start',
      angle: 0,
    },
    ...(more.marks ?? []),
  ];
  return { id, name, marks, silhouette, bounds, cuts: [{ cloth: 'outer', count: 1 }] };
};

export const rectangle = (width: number, height: number): Path =>
  polygon([point(0, 0), point(width, 0), point(width, height), point(0, height)]);

export const disc = (id: string, name: string, r: number): PieceDrawing =>
  drawn(id, name, circle(point(0, 0), r), { stitch: circle(point(0, 0), r - 6) });

/** Between two circles about the origin, upright, counter-clockwise. */
export const sector = (inner: number, outer: number, angle: number): Path => {
  const at = (r: number, a: number) => point(r * Math.sin(a), r * Math.cos(a));
  const low = arc(point(0, 0), at(inner, -angle / 2), -angle);
  const high = arc(point(0, 0), at(outer, angle / 2), angle);
  return [low, line(pathEnd([low]), high.from), high, line(high.to, low.from)];
};

export const sideBand = (id: string, name: string): PieceDrawing =>
  drawn(id, name, sector(343, 419, 0.83), { stitch: sector(349, 413, 0.8), at: point(0, 381) });

/** A visor: an inner and an outer edge of cubics that meet in two tips. */
export const crescent = (width: number, bow: number, depth: number): Path => {
  const [a, b] = [point(-width / 2, 0), point(width / 2, 0)];
  const inner = cubic(a, point(-width / 4, (bow * 4) / 3), point(width / 4, (bow * 4) / 3), b);
  const tall = ((bow + depth) * 4) / 3;
  const outer = cubic(a, point(-width * 0.42, tall), point(width * 0.42, tall), b);
  return [...reversed([inner]), outer];
};

export const visor = (id: string, name: string, grown = 6): PieceDrawing =>
  drawn(id, name, crescent(196 + 2 * grown, 38, 52 + grown), { at: point(0, 62) });

export const band = (id: string, name: string, length = 572, height = 50): PieceDrawing =>
  drawn(id, name, rectangle(length, height), {
    stitch: polygon([point(6, 6), point(length - 6, 6), point(length - 6, height - 6), point(6, height - 6)]),
    at: point(length / 2, height / 2),
  });

/** An adult flat-top cap, about as large as one is: not a draft, only its shapes. */
export const adultCap = (): readonly PieceDrawing[] => [
  disc('tip', 'Tip', 111.5),
  sideBand('side-band', 'Side band'),
  band('band', 'Band'),
  visor('visor', 'Visor'),
  visor('stiffener', 'Visor stiffener', -2),
  band('strap', 'Strap', 290, 31),
  disc('lining-tip', 'Lining tip', 111.5),
  sideBand('lining-side-band', 'Lining side band'),
  band('lining-band', 'Lining band'),
  band('interlining-band', 'Band interlining', 560, 38),
  visor('interlining-visor', 'Visor interlining', 0),
];

/** A4 as most people print it. */
export const plainPaper: PaperSpec = defaultSpec.paper;

export const heading: Heading = {
  cap: 'Cornet’s cap',
  wearer: 'Cornet',
  date: '2026-11-25',
  unit: 'cm',
  finishedGirth: 558.8,
};
