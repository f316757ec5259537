import paper from 'paper/dist/paper-core';
import type { Placed } from '../../drawing/arrange.ts';
import type { LineRole } from '../../drawing/drawing.ts';
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
}

export interface Painter {
  /** Lays things as they are in the scene, unseen until it is painted. */
  readonly lay: (scene: Scene) => void;
  readonly paint: (scene: Scene) => void;
  readonly close: () => void;
}

/** Widths in pixels of the outline of a piece that is lit or chosen, and of a ghost. */
const LIT = 5;
const GHOST = 1.25;
/** From this many pixels to the mm on, every piece shows its dimensions and rows of topstitching; before, the one that is lit or chosen. */
const CLOSE = 2.6;
const seenClose = (role: LineRole): boolean => role === 'dimension' || role === 'row';

/** Paints pieces on a canvas with Paper, redoing only what has changed since the last time. */
export const openPainter = (canvas: HTMLCanvasElement): Painter => {
  const scope = new paper.PaperScope();
  scope.setup(canvas);
  scope.settings.insertItems = false;
  scope.view.autoUpdate = false;
  const layer = scope.project.activeLayer;
  // The view stays as it is and the layer is moved under it: a moved view costs every line more than a moved layer.
  layer.applyMatrix = false;
  const layers = openLayers(layer);
  let laid: readonly unknown[] = [];
  let look: Look | null = null;
  let seen: Size | null = null;

  const lay = (scene: Scene): void => {
    const { placed, ghost, chosen, lit, seam, chalks, view } = scene;
    if (look?.chalks !== chalks || look.scale !== view.scale) look = { chalks, scale: view.scale };
    const asks = [placed, ghost, chosen, lit, seam, look];
    if (asks.every((ask, i) => ask === laid[i])) return;
    scope.activate();
    layers(scene, look);
    laid = asks;
  };
  const paint = (scene: Scene): void => {
    const { size, view } = scene;
    lay(scene);
    scope.activate();
    if (size.width !== seen?.width || size.height !== seen.height) {
      scope.view.viewSize = new paper.Size(size.width, size.height);
      seen = size;
    }
    layer.matrix = new paper.Matrix(
      view.scale,
      0,
      0,
      view.scale,
      size.width / 2 - view.centre.x * view.scale,
      size.height / 2 + view.centre.y * view.scale,
    );
    scope.view.update();
  };
  const close = (): void => {
    scope.project.remove();
    scope.view?.remove();
  };
  return { lay, paint, close };
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
