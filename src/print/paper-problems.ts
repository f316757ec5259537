import type { Problem } from '../pattern/problem.ts';
import { mm, type Words, words } from '../words.ts';
import { coverFits } from './cover/size.ts';
import type { PaperSpec } from './paper.ts';
import { sheetGrid } from './sheet-grid.ts';
import { pageSize, papers } from './sheet-size.ts';

/** A printer is taken to be off by no more than this, mm on the 100 mm square; more is a viewer that scaled. */
const MEASURED = { least: 90, most: 110 } as const;
/** Less overlap than this (mm) leaves nothing to glue. */
const LEAST_OVERLAP = 5;
/** On endless paper every margin leaves room: more than anyone would keep free, mm. */
const MARGIN_OF_ENDLESS = 100;

/**
 * What cannot be printed on this paper and the nearest value that can; empty when all is well. A square that was
 * measured has no nearest value: nobody measured it.
 */
export const paperProblems = (paper: PaperSpec): readonly Problem[] => {
  const measured = [...measuredProblems(paper, 'measuredAcross'), ...measuredProblems(paper, 'measuredDown')];
  // How much fits on a sheet can only be told once the printer's scale makes sense.
  if (measured.length > 0) return measured;
  const margin = marginProblems(paper);
  return margin.length > 0 ? margin : overlapProblems(paper);
};

const measuredProblems = (paper: PaperSpec, field: 'measuredAcross' | 'measuredDown'): readonly Problem[] => {
  const value = paper[field];
  if (value >= MEASURED.least && value <= MEASURED.most) return [];
  const message = words`That is not a 100 mm square: check that the viewer did not scale, and print it again at 100 %.`;
  return [{ field: `paper.${field}`, message }];
};

const marginProblems = (paper: PaperSpec): readonly Problem[] => {
  const problem = (message: Words, nearest: number): readonly Problem[] => [
    { field: 'paper.margin', message, nearest },
  ];
  if (!(paper.margin >= 0))
    return problem(words`A margin cannot be less than nothing. Most printers need ${mm(6)} or more.`, 0);
  const { kind, label } = papers[paper.paper];
  const most = kind === 'sheets' ? largestMargin(paper) : MARGIN_OF_ENDLESS;
  if (paper.margin <= most) return [];
  if (kind !== 'sheets')
    return problem(words`So wide a margin only wastes paper. ${mm(most)} is the most.`, most);
  return problem(
    words`With this margin ${label} has no room left for the test squares. ${mm(most)} is the most.`,
    most,
  );
};

/** The widest margin of a sheet, whole mm, that leaves room for the first sheet's test squares, sheet map and notes. */
const largestMargin = (paper: PaperSpec): number => {
  const { width, height } = pageSize(paper);
  const fits = (margin: number): boolean => coverFits(sheetGrid({ ...paper, margin }).window);
  let most = Math.floor(Math.min(width, height) / 2);
  while (most > 0 && !fits(most)) most--;
  return most;
};

const overlapProblems = (paper: PaperSpec): readonly Problem[] => {
  // Is nothing overlapped?
  if (paper.join !== 'overlap' || papers[paper.paper].kind === 'one-page') return [];
  const problem = (message: Words, nearest: number): readonly Problem[] => [
    { field: 'paper.overlap', message, nearest },
  ];
  if (!(paper.overlap >= LEAST_OVERLAP))
    return problem(
      words`An overlap needs ${mm(LEAST_OVERLAP)} to hold glue. Less than that is a butt join.`,
      LEAST_OVERLAP,
    );
  const { window } = sheetGrid(paper);
  const most = Math.floor(Math.min(window.width, window.height) / 3);
  if (paper.overlap <= most) return [];
  return problem(words`So wide an overlap covers the sheet. ${mm(most)} is the most on this paper.`, most);
};
