import type { Values } from '../caps/parameter.ts';
import type { Cloths } from '../cloth/cloth.ts';
import { clothsOf } from '../pattern/cloths-of.ts';
import type { Pattern } from '../pattern/pattern.ts';
import type { Cloth, Piece } from '../pattern/piece.ts';
import type { EdgeUse } from '../pattern/seam.ts';
import type { SeamReport } from '../pattern/seam-check.ts';
import { type Part, partOf } from './parts.ts';
import { phaseOfSort, type Sort, sortOf } from './sort.ts';
import type { Phase } from './step.ts';
import { phases } from './step.ts';

/** What the order of work is written from: one draft with its seams measured, and its cloths. Lengths in mm. */
export interface Work {
  readonly values: Values;
  readonly finishedGirth: number;
  /** The pieces as they are in the finished cap, and as they are cut: the very same where no wash takes anything. */
  readonly pattern: Pattern;
  readonly cutting: Pattern;
  readonly seams: readonly SeamReport[];
  readonly cloths: Cloths;
}

/** Seams that are sewn in one go: alike but for their number or their side. */
export interface Group {
  /** What their ids share. */
  readonly id: string;
  readonly sort: Sort;
  readonly phase: Phase;
  readonly seams: readonly SeamReport[];
}

/** The seams in the order in which they are sewn. Within a phase the pattern's own order stands. */
export const groupsOf = ({ seams }: Work): readonly Group[] => {
  const order = seams.map(({ seam }) => seam);
  const groups: Group[] = [];
  for (const report of seams) {
    const id = report.seam.id.replace(/(\d+|Left|Right)$/, '');
    const sort = sortOf(report.seam, order);
    const at = groups.findIndex((group) => group.id === id && group.sort === sort);
    if (at < 0) groups.push({ id, sort, phase: phaseOfSort(sort), seams: [report] });
    else groups[at] = { ...groups[at]!, seams: [...groups[at]!.seams, report] };
  }
  return groups.sort((a, b) => phases.indexOf(a.phase) - phases.indexOf(b.phase));
};

export const usesOf = (reports: readonly SeamReport[]): readonly EdgeUse[] =>
  reports.flatMap(({ seam }) => [...seam.a, ...seam.b]);

/** Ids of the pieces in some seams, each once. */
export const piecesIn = (reports: readonly SeamReport[]): readonly string[] => [
  ...new Set(usesOf(reports).map(({ piece }) => piece)),
];

export const pieceOf = ({ pattern }: Pick<Work, 'pattern'>, id: string): Piece | undefined =>
  pattern.pieces.find((piece) => piece.id === id);

export const piecesOfPart = ({ pattern }: Pick<Work, 'pattern'>, part: Part): readonly Piece[] =>
  pattern.pieces.filter(({ id }) => partOf(id) === part);

/** Of the cloths those that are seen or lie against the head. */
export const clothsWorn = ({ pattern }: Pick<Work, 'pattern'>): readonly Cloth[] =>
  clothsOf(pattern.pieces).filter((cloth) => cloth === 'outer' || cloth === 'lining');
