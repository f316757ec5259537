import { boundsOf } from '../geometry/bounds.ts';
import type { Point } from '../geometry/point.ts';
import type { Piece } from '../pattern/piece.ts';
import { domed } from './domed.ts';
import { normalsOf } from './normals.ts';
import { placeOnSheet } from './on-sheet.ts';
import { NO_FINER, type Sheet } from './sheet.ts';

/** How far a strap lies off its band, and a button off what it is sewn to, mm. Our own, for the look. */
const [STRAP_OFF, BUTTON_OFF, BUTTON_RISE] = [1.5, 2.5, 2.5];
const EYELET_OFF = 0.6;
/** The worked rim of an eyelet is so broad, mm. */
export const EYELET_RIM = 1.5;
const STRAP_STEP = 4;
const BUTTON_STEPS = 20;

/**
 * The sheets with what is on them: eyelets and buttons where a piece has marks for them, the strap from button to button, and
 * the button on top domed.
 */
export const trimmed = (sheets: readonly Sheet[], pieces: readonly Piece[]): readonly Sheet[] => [
  ...sheets.map((sheet) => (sheet.piece === 'topButton' ? domed(sheet) : sheet)),
  ...sheets.flatMap((sheet) => {
    const marks = pieces.find(({ id }) => id === sheet.piece)?.marks ?? [];
    const buttons = marks.filter((mark) => mark.kind === 'button');
    const eyelets = marks.filter((mark) => mark.kind === 'eyelet');
    if (buttons.length + eyelets.length === 0) return [];
    const lift = liftOff(sheet);
    const strap = pieces.find(({ id }) => id === 'strap');
    return [
      ...(strap && buttons.length === 2 ? strapOn(strap, buttons[0]!.at, buttons[1]!.at, lift) : []),
      ...buttons.flatMap(({ at, diameter }) => buttonOn(at, diameter / 2, strap?.id ?? sheet.piece, lift)),
      ...eyelets.flatMap(({ at, diameter }) => eyeletOn(at, diameter / 2, sheet.piece, lift)),
    ];
  }),
];

type Lift = (flat: Point, off: number) => readonly [number, number, number] | null;

/** The place in space over a place on the flat piece, so many mm off the cloth. */
const liftOff = (sheet: Sheet): Lift => {
  const normals = normalsOf(sheet);
  const place = placeOnSheet(sheet);
  return (flat, off) => {
    const found = place(flat);
    if (found === null) return null;
    const at = (c: number) =>
      found.reduce((sum, [k, w]) => sum + w * (sheet.at[3 * k + c]! + off * normals[3 * k + c]!), 0);
    return [at(0), at(1), at(2)];
  };
};

/** A strap laid along the band from one button to the other, as broad as its piece, round beyond both. */
const strapOn = (strap: Piece, from: Point, to: Point, lift: Lift): readonly Sheet[] => {
  const { min, max } = boundsOf(strap.outline.flatMap(({ path }) => path));
  const half = (max.y - min.y) / 2;
  const span = to.x - from.x;
  const count = 2 * Math.ceil(span / STRAP_STEP / 2);
  const ends = Array.from({ length: 6 }, (_, i) => (i / 5) * (Math.PI / 2));
  const stops = [
    ...ends.map((t) => ({ x: from.x - half * Math.cos(t), half: half * Math.sin(t) })),
    ...Array.from({ length: count - 1 }, (_, i) => ({ x: from.x + (span * (i + 1)) / count, half })),
    ...ends.toReversed().map((t) => ({ x: to.x + half * Math.cos(t), half: half * Math.sin(t) })),
  ];
  return netOver(
    'strap',
    stops.map(({ x, half: h }) => [0, 1, 2].map((j) => ({ x, y: from.y + h * (1 - j), off: STRAP_OFF }))),
    lift,
  );
};

/** A round button, a little domed. */
const buttonOn = (at: Point, r: number, piece: string, lift: Lift): readonly Sheet[] =>
  discOn('button', at, r, piece, lift, BUTTON_OFF, BUTTON_RISE);

/** An eyelet's rim lies on the cloth round its hole. */
const eyeletOn = (at: Point, hole: number, piece: string, lift: Lift): readonly Sheet[] =>
  discOn('eyelet', at, hole + EYELET_RIM, piece, lift, EYELET_OFF, 0);

const discOn = (
  disc: 'button' | 'eyelet',
  at: Point,
  r: number,
  piece: string,
  lift: Lift,
  off: number,
  rise: number,
): readonly Sheet[] =>
  netOver(
    piece,
    Array.from({ length: BUTTON_STEPS + 1 }, (_, i) => {
      const turn = -(i * 2 * Math.PI) / BUTTON_STEPS;
      return [1, 0.8, 0].map((share) => ({
        x: at.x + r * share * Math.cos(turn),
        y: at.y + r * share * Math.sin(turn),
        off: off + rise * (1 - share * share),
      }));
    }).map((row) => row.toReversed()),
    lift,
  ).map((sheet) => ({ ...sheet, disc }));

const netOver = (
  piece: string,
  net: readonly (readonly (Point & { readonly off: number })[])[],
  lift: Lift,
): readonly Sheet[] => {
  const knots = net.flat().map((knot) => ({ knot, at: lift(knot, knot.off) }));
  // Is part of it off the piece? Then it cannot be shown there.
  if (knots.some(({ at }) => at === null)) return [];
  return [
    {
      piece,
      copy: 0,
      open: false,
      likeness: true,
      rows: net.length,
      columns: net[0]!.length,
      finer: NO_FINER,
      at: Float64Array.from(knots.flatMap(({ at }) => at ?? [])),
      flat: Float64Array.from(knots.flatMap(({ knot }) => [knot.x, knot.y])),
    },
  ];
};
