import paper from 'paper/dist/paper-core';
import type { Placed } from '../../drawing/arrange.ts';
import type { LineRole } from '../../drawing/drawing.ts';
import { same } from '../same.ts';
import type { Chalks } from './chalks.ts';
import { openLines } from './lines.ts';
import type { Look } from './look.ts';
import { type Lying, openShapes } from './shapes.ts';
import { type Lettered, openTexts } from './texts.ts';
import type { Size, View } from './view.ts';

/** What lies on the table and how it is seen. */
export interface Scene {
  readonly placed: readonly Placed[];
  readonly ghost: readonly Placed[];
  readonly chosen: string | null;
  readonly lit: string | null;
  readonly seam: readonly Lying[];
  readonly chalks: Chalks;
  readonly view: View;
  readonly size: Size;
  /** Pixels of the screen to one of the page. */
  readonly ratio: number;
}

/** Gives a picture of the scene, nothing behind it. */
export type Painter = (scene: Scene) => ImageBitmap;

/** Widths in pixels of the outline of a piece that is lit or chosen, and of a ghost. */
const LIT = 5;
const GHOST = 1.25;
/** From this many pixels to the mm on, every piece shows its dimensions and rows of topstitching; before, the one that is lit or chosen. */
const CLOSE = 2.6;
const seenClose = (role: LineRole): boolean => role === 'dimension' || role === 'row';

/** What Paper paints a project by on any canvas, be there a page or not: its types leave it out. */
interface OnCanvas {
  readonly draw: (context: OffscreenCanvasRenderingContext2D, matrix: paper.Matrix, ratio: number) => void;
}

/** Paints pieces with Paper on a canvas out of sight, redoing only what has changed since the last time. */
export const openPainter = (): Painter => {
  const canvas = new OffscreenCanvas(1, 1);
  const context = canvas.getContext('2d')!;
  const scope = new paper.PaperScope();
  scope.setup(new paper.Size(1, 1));
  scope.settings.insertItems = false;
  scope.view.autoUpdate = false;
  measureTexts(scope.view, context);
  const layer = scope.project.activeLayer;
  // The view stays as it is and the layer is moved under it: a moved view costs every line more than a moved layer.
  layer.applyMatrix = false;
  const layers = openLayers(layer);
  const [still, project] = [new paper.Matrix(), scope.project as unknown as OnCanvas];
  let laid: readonly unknown[] = [];
  let look: Look | null = null;

  const lay = (scene: Scene): void => {
    const { placed, ghost, chosen, lit, seam, chalks, view } = scene;
    if (look?.scale !== view.scale || !same(look.chalks, chalks)) look = { chalks, scale: view.scale };
    const asks = [placed, ghost, chosen, lit, seam, look];
    if (asks.every((ask, i) => ask === laid[i])) return;
    layers(scene, look);
    laid = asks;
  };
  const paint = (scene: Scene): ImageBitmap => {
    const { size, view, ratio } = scene;
    lay(scene);
    [canvas.width, canvas.height] = [size.width * ratio, size.height * ratio].map(Math.round) as [
      number,
      number,
    ];
    context.scale(ratio, ratio);
    layer.matrix = new paper.Matrix(
      view.scale,
      0,
      0,
      view.scale,
      size.width / 2 - view.centre.x * view.scale,
      size.height / 2 + view.centre.y * view.scale,
    );
    project.draw(context, still, ratio);
    return canvas.transferToImageBitmap();
  };
  return paint;
};

/** Where there is no page Paper takes every text to have no width: it is told. */
const measureTexts = (view: paper.View, context: OffscreenCanvasRenderingContext2D): void => {
  const getTextWidth = (font: string, lines: readonly string[]): number => {
    context.font = font;
    return Math.max(0, ...lines.map((line) => context.measureText(line).width));
  };
  Object.assign(view, { getTextWidth });
};

/**
 * The layers of the table from below: the sheets of the pieces, their lines, their texts; then dimensions and rows, and
 * their figures; the ghosts over all, and a seam that is lit.
 */
const openLayers = (layer: paper.Layer): ((scene: Scene, look: Look) => void) => {
  const [sheets, chosenSheet, outlines, ghosts] = [openShapes(), openShapes(), openShapes(), openShapes()];
  const seams = openShapes();
  const [lines, measures] = [
    openLines(({ role }) => !seenClose(role)),
    openLines(({ role }) => seenClose(role)),
  ];
  const [texts, figures] = [
    openTexts((role) => role !== 'dimension'),
    openTexts((role) => role === 'dimension'),
  ];
  layer.addChildren([
    ...[sheets, chosenSheet, outlines].map(({ item }) => item),
    ...[lines, texts, measures, figures].map(({ group }) => group),
    ghosts.item,
    seams.item,
  ]);
  let inked: Look | null = null;
  const ink = ({ chalks, scale }: Look): void => {
    sheets.item.fillColor = faint(chalks.paper, 0.72);
    chosenSheet.item.fillColor = faint(chalks.chalk, 0.12);
    outlines.item.strokeColor = new paper.Color(chalks.chalk);
    outlines.item.strokeWidth = LIT / scale;
    seams.item.strokeColor = new paper.Color(chalks.chalk);
    seams.item.strokeWidth = LIT / scale;
    ghosts.item.strokeColor = faint(chalks.ink, 0.35);
    ghosts.item.strokeWidth = GHOST / scale;
  };

  return ({ placed, ghost, chosen, lit, seam }, look) => {
    if (inked !== look) ink(look);
    inked = look;
    const isOutlined = ({ drawing: { id } }: Placed): boolean => id === lit || id === chosen;
    const measured = look.scale >= CLOSE ? placed : placed.filter(isOutlined);
    sheets.lay(placed.filter(({ drawing }) => drawing.id !== chosen).map(silhouette));
    chosenSheet.lay(placed.filter(({ drawing }) => drawing.id === chosen).map(silhouette));
    outlines.lay(placed.filter(isOutlined).map(silhouette));
    lines.lay(placed, look);
    measures.lay(measured, look);
    stepAside(texts.lay(placed, look), figures.lay(measured, look));
    ghosts.lay(changedFrom(ghost, placed));
    seams.lay(seam);
  };
};

/** The old outlines of pieces that have changed, over those that have taken their place. */
const changedFrom = (ghost: readonly Placed[], placed: readonly Placed[]): Lying[] => {
  const now = new Map(placed.map((piece) => [piece.drawing.id, piece]));
  return ghost.flatMap(({ drawing, at }) => {
    const there = now.get(drawing.id);
    return there?.drawing === drawing ? [] : [silhouette({ drawing, at: there?.at ?? at })];
  });
};

const silhouette = ({ drawing, at }: Placed): Lying => ({ path: drawing.silhouette, at });

const faint = (name: string, alpha: number): paper.Color => {
  const colour = new paper.Color(name);
  colour.alpha = alpha;
  return colour;
};

/** A name steps aside for a figure of its piece: the caption says it too. */
const stepAside = (texts: readonly Lettered[], figures: readonly Lettered[]): void => {
  for (const { written, items } of texts) {
    const inTheWay = figures.some(
      (figure) => figure.written.piece === written.piece && items.some((item) => meet(item, figure.items)),
    );
    for (const item of items) item.visible = !inTheWay;
  }
};

const meet = (item: paper.PointText, others: readonly paper.PointText[]): boolean =>
  others.some((other) => other.bounds.intersects(item.bounds));
