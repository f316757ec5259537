import { degrees } from '../../units.ts';

/** What can be wrong when a toile or a cap is tried on. */
export type FindingId =
  | 'tight'
  | 'loose'
  | 'pinched'
  | 'ears'
  | 'perches'
  | 'temples'
  | 'visorUp'
  | 'collapses'
  | 'box'
  | 'seamsPull';

/** A way to mend it: which row of the style's table, and by how much, mm or radians. The first that the style has is taken. */
export interface Remedy {
  readonly key: string;
  readonly by: number;
  /** Only if another row has this value. */
  readonly when?: { readonly key: string; readonly is: boolean };
}

export interface Finding {
  readonly id: FindingId;
  /** As the wearer says it. */
  readonly title: string;
  /** Asked for where pins or a tape can tell, mm: the question and the usual answer. */
  readonly amount?: { readonly question: string; readonly usual: number };
  readonly remedies: readonly Remedy[];
}

/** Steps that a fitter would take at a time: common practice. */
export const findings: readonly Finding[] = [
  {
    id: 'tight',
    title: 'It is tight',
    amount: { question: 'How much more does it want, all round?', usual: 6 },
    remedies: [{ key: 'ease', by: 1 }],
  },
  {
    id: 'loose',
    title: 'It is loose and slips',
    amount: { question: 'How much too wide is it, all round?', usual: 6 },
    remedies: [{ key: 'ease', by: -1 }],
  },
  {
    id: 'pinched',
    title: 'I pinched it out at the back',
    amount: { question: 'How much cloth do the pins take up, both sides of the fold?', usual: 8 },
    remedies: [{ key: 'ease', by: -1 }],
  },
  {
    id: 'ears',
    title: 'It falls over the ears',
    remedies: [
      { key: 'crownHeight', by: -8 },
      { key: 'crownRoom', by: -10 },
      { key: 'ease', by: -6 },
    ],
  },
  {
    id: 'perches',
    title: 'It sits too high',
    remedies: [
      { key: 'crownHeight', by: 8 },
      { key: 'crownRoom', by: 10 },
      { key: 'sideBandHeight', by: 6 },
    ],
  },
  {
    id: 'temples',
    title: 'It stands off at the temples',
    remedies: [
      { key: 'visorLength', by: -10 },
      { key: 'ease', by: -4 },
    ],
  },
  { id: 'visorUp', title: 'The visor points up', remedies: [{ key: 'visorDrop', by: degrees(6) }] },
  {
    id: 'collapses',
    title: 'The crown collapses',
    remedies: [
      { key: 'crownFullness', by: -20 },
      { key: 'goreFullness', by: -20 },
      { key: 'spread', by: -12 },
      { key: 'topWidth', by: -10 },
      { key: 'crownRoom', by: -8 },
      { key: 'sideBandHeight', by: -6 },
    ],
  },
  {
    id: 'box',
    title: 'The crown stands like a box',
    remedies: [
      { key: 'crownFullness', by: 20 },
      { key: 'goreFullness', by: 20 },
      { key: 'topWidth', by: 10 },
      { key: 'crownTaper', by: 12 },
      { key: 'goreWidest', by: 0.05 },
    ],
  },
  {
    id: 'seamsPull',
    title: 'The side seams pull',
    remedies: [
      { key: 'liningTake', by: -1, when: { key: 'lining', is: true } },
      { key: 'crownRoom', by: 8 },
      { key: 'crownFullness', by: 12 },
      { key: 'crownHeight', by: 5 },
    ],
  },
];

export const findingOf = (id: FindingId): Finding => findings.find((one) => one.id === id)!;
