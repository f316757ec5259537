import { pathLength } from '../../../geometry/measure.ts';
import { normalAngle, parallelAngle, parallelGirth } from '../../../geometry/oval-parallel.ts';
import type { SlopeShape } from '../../../geometry/slope-shape.ts';
import type { Side } from '../../../pattern/chain.ts';
import type { Piece } from '../../../pattern/piece.ts';
import { brimPiece } from './brim-piece.ts';
import { type BrimSlope, brimShape, isOwnMirror, type Span } from './brim-slope.ts';
import type { BrimMake } from './parameters.ts';
import { type BrimLayer, brimLayer, type Place } from './places.ts';
import {
  areMirrored,
  notchesAt,
  quarterStops,
  type RingStop,
  stopsMeeting,
  stopsWithin,
} from './ring-stops.ts';
import { brimSections, type Section } from './sections.ts';

/** Upper and under brim: one set of pieces for both. */
export interface Brim {
  readonly pieces: readonly Piece[];
  readonly upper: BrimLayer;
  /** It lies face down, its edges against those of the upper brim. Its copies are counted on from the upper brim's. */
  readonly under: BrimLayer;
  /** The upper brim's pieces where they lie. */
  readonly places: readonly Place[];
}

/** A piece of the brim, and where in the ring it lies. */
interface Cutting {
  readonly section: Section;
  readonly id: string;
  readonly shape: SlopeShape;
  readonly stops: readonly RingStop[];
  /** Its own mirror image, notches and all: every copy is cut face up. */
  readonly symmetric: boolean;
  /** Copies for one layer. */
  readonly count: number;
  readonly places: readonly Place[];
}

/** The brim off an opening, to be sewn to what goes round the head there (from the centre back round to it again). */
export const brim = (slope: BrimSlope, make: BrimMake, meets: Side): Brim => {
  const stops = stopsMeeting(meets);
  const cuttings = cuttingsOf(slope, make, stops);
  const places = inOrder(cuttings);
  const shapes = new Map(cuttings.map(({ id, shape }) => [id, shape]));
  const length = (piece: string, edge: string) =>
    pathLength(shapes.get(piece)![edge === 'inner' ? 'top' : 'bottom']);
  const under = places.map((place): Place => {
    const { count, symmetric } = cuttings.find(({ id }) => id === place.piece)!;
    // Face down, what was drawn for the right lies on the left.
    const paired = count > 1 && !symmetric;
    return { ...place, copy: count + (paired ? place.copy ^ 1 : place.copy) };
  });
  const all = cuttings.reduce((sum, { count }) => sum + count, 0);
  return {
    pieces: cuttings.map((cutting) =>
      brimPiece({ ...cutting, slope, make, sections: all, notches: notchesOf(slope, cutting) }),
    ),
    upper: brimLayer(places, length),
    under: brimLayer(under, length),
    places,
  };
};

const cuttingsOf = (slope: BrimSlope, make: BrimMake, stops: readonly RingStop[]): readonly Cutting[] => {
  const girth = parallelGirth(slope.opening);
  const sections = brimSections(make);
  const within = sections.map((section) => stopsWithin(stops, section, girth));
  const [back, front] = sections;
  // Are the front quarters the back ones seen in a mirror, notches and all? Then one piece serves for both.
  if (make.brimPieces === '4' && areMirrored(within[0]!, back!, within[1]!, front!, girth)) {
    return [cutting(slope, { ...back!, end: '' }, within[0]!, true)];
  }
  return sections.map((section, i) => cutting(slope, section, within[i]!, false));
};

const cutting = (
  slope: BrimSlope,
  section: Section,
  stops: readonly RingStop[],
  fourfold: boolean,
): Cutting => {
  const id = `brim${section.end}`;
  // What lies across the centre line is its own mirror image, as every crown is.
  const symmetric =
    !section.paired ||
    (isOwnMirror(slope, section) &&
      areMirrored(stops, section, stops, section, parallelGirth(slope.opening)));
  const { from, to } = section;
  const spans: readonly Span[] = fourfold
    ? [0, 1, 2, 3].map((i) => ({ from: i / 4, to: (i + 1) / 4 }))
    : section.paired
      ? [section, { from: 1 - to, to: 1 - from }]
      : [section];
  const places = spans.map(
    (span, copy): Place => ({
      from: span.from,
      to: span.to,
      piece: id,
      copy,
      turned: !symmetric && copy % 2 === 1,
    }),
  );
  return { section, id, shape: brimShape(slope, section), stops, symmetric, count: spans.length, places };
};

const inOrder = (cuttings: readonly Cutting[]): readonly Place[] =>
  cuttings.flatMap(({ places }) => places).sort((p, q) => p.from - q.from);

/** Notches along both edges: what the opening has, and the quarters along the outer edge. */
const notchesOf = (slope: BrimSlope, { section, shape, stops }: Cutting) => {
  const { oval, out } = slope.opening;
  const girth = parallelGirth(slope.opening);
  const reach = slope.width * Math.cos(slope.drop);
  const { from, to } = section;
  const turned = (part: number) => normalAngle(oval, parallelAngle({ oval, out }, part));
  const outerAlong = (part: number) => girth * (part - from) + reach * (turned(part) - turned(from));
  const [inner, outer] = [pathLength(shape.top), pathLength(shape.bottom)];
  const quarters = stopsWithin(quarterStops, section, girth);
  const middle = { at: (from + to) / 2, count: 1, name: 'middle of the piece' } as const;
  return [
    ...notchesAt('inner', stops, (part) => (inner * (to - part)) / (to - from)),
    ...notchesAt(
      'outer',
      quarters.length > 0 ? quarters : [middle],
      (part) => (outer * outerAlong(part)) / outerAlong(to),
    ),
  ];
};
