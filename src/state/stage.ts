/** The five stages of the work, in order. */
export const stages = ['head', 'cap', 'cloth', 'paper', 'sewing'] as const;
export type Stage = (typeof stages)[number];

export const stageNames: Readonly<Record<Stage, string>> = {
  head: 'Head',
  cap: 'Cap',
  cloth: 'Cloth',
  paper: 'Paper',
  sewing: 'Sewing',
};
