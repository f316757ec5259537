import { degrees } from '../../../units.ts';
import type { ParameterTable, ValuesOf } from '../../parameter.ts';

/** What can be wished of a brim. */
export const brimParameters = {
  brimWidth: {
    kind: 'length',
    label: 'Brim width',
    help: 'From the crown to the outer edge, along the cloth: the same all round.',
    group: 'brim',
    min: 30,
    max: 160,
    step: 2,
    inchStep: 1 / 8,
    default: 66,
    usual: [50, 76],
  },
  brimDrop: {
    kind: 'angle',
    label: 'Brim drop',
    help: 'How far the brim slopes down from level. More hangs closer to the face.',
    group: 'brim',
    min: 0,
    max: degrees(75),
    step: degrees(1),
    default: degrees(40),
    usual: [degrees(30), degrees(60)],
  },
  brimShape: {
    kind: 'choice',
    label: 'Brim shape',
    help: 'Round lets the cloth take the shape of the head. Oval is drawn on it: better for a wide or stiff brim.',
    group: 'brim',
    options: [
      { value: 'round', label: 'Round' },
      { value: 'oval', label: 'The head’s oval' },
    ],
    default: 'round',
  },
  brimPieces: {
    kind: 'choice',
    label: 'Brim pieces',
    help: 'One ring has only a seam at the back; sections lie closer on the cloth and print on fewer sheets.',
    group: 'brim',
    options: [
      { value: 'whole', label: '1 ring' },
      { value: '2', label: '2 halves' },
      { value: '3', label: '3 sections' },
      { value: '4', label: '4 quarters' },
    ],
    default: 'whole',
  },
  brimHalves: {
    kind: 'choice',
    label: 'Halves meet',
    help: 'Seams at the sides leave the front smooth; seams at front and back put the same piece on both sides.',
    group: 'brim',
    options: [
      { value: 'sides', label: 'At the sides' },
      { value: 'centre', label: 'At front and back' },
    ],
    default: 'sides',
    when: { brimPieces: '2' },
  },
  brimUnder: {
    kind: 'choice',
    label: 'Under brim',
    help: 'The side of the brim that is seen from below.',
    group: 'brim',
    options: [
      { value: 'outer', label: 'Same cloth' },
      { value: 'lining', label: 'Lining cloth' },
    ],
    default: 'outer',
  },
  brimBody: {
    kind: 'choice',
    label: 'Inside the brim',
    help: 'What is laid between upper and under brim to hold it out.',
    group: 'brim',
    options: [
      { value: 'none', label: 'Nothing' },
      { value: 'one', label: 'Interlining, 1 layer' },
      { value: 'two', label: 'Interlining, 2 layers' },
      { value: 'stiffener', label: 'Stiffener' },
    ],
    default: 'one',
  },
  brimStitched: {
    kind: 'switch',
    label: 'Rows of topstitching',
    help: 'Rows round the brim, from the edge inwards, that hold its layers together.',
    group: 'brim',
    default: true,
  },
  brimRowSpacing: {
    kind: 'length',
    label: 'Between the rows',
    help: 'From one row of topstitching to the next.',
    group: 'brim',
    min: 4,
    max: 20,
    step: 1,
    inchStep: 1 / 16,
    default: 7,
    usual: [6, 8],
    when: { brimStitched: true },
  },
} as const satisfies ParameterTable;

export type BrimValues = ValuesOf<typeof brimParameters>;

/** What a brim's pieces follow from besides its slope. */
export type BrimMake = Pick<
  BrimValues,
  'brimPieces' | 'brimHalves' | 'brimUnder' | 'brimBody' | 'brimStitched' | 'brimRowSpacing'
>;
