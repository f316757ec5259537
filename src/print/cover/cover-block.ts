import type { PieceDrawing } from '../../drawing/drawing.ts';
import { polygon } from '../../geometry/path.ts';
import { point } from '../../geometry/point.ts';
import { type CoverContent, headMarks, inchPart, listParts } from './cover.ts';
import { fillColumns, type Part } from './flow.ts';
import { pictureIn } from './picture.ts';
import { GAP, HEAD, isUseful, type Region, SQUARE_INCH, SQUARE_MM } from './size.ts';
import { metricSquare } from './squares.ts';

/** The list of pieces on endless paper is so wide; and where the picture of the cap stands beside it, the list gives it room. mm. */
const [LIST, BESIDE] = [100, 40];

/** What the first sheet has, for endless paper: one block, as wide as the squares and the list need, with the cap as it is worn where room is left. */
export const coverBlock = (content: CoverContent): PieceDrawing => {
  const side = SQUARE_MM + GAP + SQUARE_INCH + GAP;
  const plan = blockPlan(content, side);
  const { tall } = plan;
  const size = { width: side + LIST, height: HEAD + tall };
  const marks = [
    ...headMarks(content.heading, size),
    ...metricSquare(content.cells.length)(point(0, tall)).marks,
    ...inchPart(content)(point(SQUARE_MM + GAP, tall)).marks,
    ...fillColumns(plan.parts, [{ at: point(side, tall), height: Infinity }]).marks,
    ...(content.picture && plan.region ? pictureIn(content.picture, plan.region) : []),
  ];
  const [b, d] = [point(size.width, 0), point(0, size.height)];
  const corner = point(size.width, size.height);
  return {
    id: 'cover',
    name: '',
    marks,
    silhouette: polygon([point(0, 0), b, corner, d]),
    bounds: { min: point(0, 0), max: corner },
  };
};

/** The list, how far it and the squares go down, and where the picture stands: below the list, below the squares, or beside a narrower list. */
const blockPlan = (
  content: CoverContent,
  side: number,
): { readonly parts: readonly Part[]; readonly tall: number; readonly region: Region | null } => {
  const wide = listOf(content, LIST);
  if (!content.picture) return { ...wide, region: null };
  const under = { left: side, top: wide.tall - wide.height - GAP, width: LIST };
  const below = { left: 0, top: wide.tall - SQUARE_INCH - GAP, width: side - GAP };
  const free = [under, below].map((one): Region => ({ ...one, height: one.top })).find(isUseful);
  if (free) return { ...wide, region: free };
  const narrow = listOf(content, LIST - BESIDE - GAP);
  const beside = { left: side + LIST - BESIDE, top: narrow.tall, width: BESIDE, height: narrow.tall };
  return { ...narrow, region: beside };
};

const listOf = (content: CoverContent, width: number) => {
  const parts = listParts(content, width);
  const height = parts.reduce((sum, part) => sum + part(point(0, 0)).height, 0);
  return { parts, height, tall: Math.max(SQUARE_INCH, height) };
};
