import paper from 'paper/dist/paper-core';
import type { Placed } from '../../drawing/arrange.ts';
import type { LineMark, PieceDrawing } from '../../drawing/drawing.ts';
import type { Chalks } from './chalks.ts';
import { inkLine, type Look, lineItems, textItems } from './paint-piece.ts';
import { paperPath } from './paper-path.ts';
import type { Size, View } from './view.ts';

/** What lies on the table and how it is seen. */
export interface Scene {
  readonly placed: readonly Placed[];
  readonly ghost: readonly Placed[];
  readonly chosen: string | null;
  readonly lit: string | null;
  readonly chalks: Chalks;
  readonly view: View;
  readonly size: Size;
}

export interface Painter {
  readonly paint: (scene: Scene) => void;
  readonly close: () => void;
}

/** One piece on the canvas: its sheet of paper below, lines and texts above, dimensions on top. */
interface Laid {
  readonly group: paper.Group;
  readonly sheet: paper.Path;
  readonly lines: readonly [paper.PathItem, LineMark][];
  readonly texts: paper.Group;
  readonly dimensions: paper.Group;
  readonly figures: paper.Group;
}

/** Widths in pixels of the outline of a piece that is lit or chosen, and of a ghost. */
const LIT = 5;
const GHOST = 1.25;
/** From this many pixels to the mm on, every piece shows its dimensions; before, the one that is lit or chosen. */
const CLOSE = 2.6;

/** Paints pieces on a canvas with Paper. Each call paints one frame, redoing only what has changed since the last. */
export const openPainter = (canvas: HTMLCanvasElement): Painter => {
  const scope = new paper.PaperScope();
  scope.setup(canvas);
  scope.settings.insertItems = false;
  scope.view.autoUpdate = false;
  const ghosts = new paper.Group({ insert: false });
  const pieces = new paper.Group({ insert: false });
  scope.project.activeLayer.addChildren([pieces, ghosts]);
  const laid = new Map<PieceDrawing, Laid>();
  let last: Scene | null = null;

  const paint = (scene: Scene): void => {
    const { size, view, chalks } = scene;
    scope.activate();
    if (size.width !== last?.size.width || size.height !== last.size.height) {
      scope.view.viewSize = new paper.Size(size.width, size.height);
    }
    const look: Look = { chalks, scale: view.scale };
    const relook = chalks !== last?.chalks || view.scale !== last.view.scale;
    if (scene.placed !== last?.placed) layPieces(pieces, laid, scene.placed, look);
    if (relook) for (const [drawing, piece] of laid) inkPiece(drawing, piece, look);
    if (relook || scene.placed !== last?.placed || scene.ghost !== last.ghost) layGhosts(ghosts, scene);
    for (const [drawing, piece] of laid) light(piece, drawing.id, scene);
    scope.view.matrix = new paper.Matrix(
      view.scale,
      0,
      0,
      view.scale,
      size.width / 2 - view.centre.x * view.scale,
      size.height / 2 + view.centre.y * view.scale,
    );
    scope.view.update();
    last = scene;
  };
  const close = (): void => {
    scope.project.remove();
    scope.view?.remove();
  };
  return { paint, close };
};

/** Puts the pieces on the table; one whose drawing lies there already is moved and not made anew. */
const layPieces = (
  pieces: paper.Group,
  laid: Map<PieceDrawing, Laid>,
  placed: readonly Placed[],
  look: Look,
): void => {
  pieces.removeChildren();
  const before = new Map(laid);
  laid.clear();
  for (const { drawing, at } of placed) {
    const piece = before.get(drawing) ?? made(drawing, look);
    piece.group.matrix = new paper.Matrix(1, 0, 0, 1, at.x, -at.y);
    laid.set(drawing, piece);
    pieces.addChild(piece.group);
  }
};

const made = (drawing: PieceDrawing, look: Look): Laid => {
  const sheet = paperPath(drawing.silhouette);
  const lines = lineItems(drawing);
  const [measures, others] = [true, false].map((wanted) =>
    lines.filter(([, mark]) => (mark.role === 'dimension') === wanted).map(([item]) => item),
  );
  const [texts, figures, dimensions] = [newGroup(), newGroup(), newGroup()];
  dimensions.addChildren([...measures!, figures]);
  const group = newGroup();
  group.applyMatrix = false;
  group.addChildren([sheet, ...others!, texts, dimensions]);
  const piece = { group, sheet, lines, texts, dimensions, figures };
  inkPiece(drawing, piece, look);
  return piece;
};

const newGroup = (): paper.Group => new paper.Group({ insert: false });

const inkPiece = (drawing: PieceDrawing, { lines, texts, figures }: Laid, look: Look): void => {
  for (const [item, mark] of lines) inkLine(item, mark, look);
  texts.removeChildren();
  texts.addChildren(textItems(drawing, look, (role) => role !== 'dimension'));
  figures.removeChildren();
  figures.addChildren(textItems(drawing, look, (role) => role === 'dimension'));
};

/**
 * The piece's sheet: a little paper over the ground; outlined in chalk when lit, tinted when chosen. Either way it
 * shows its dimensions.
 */
const light = (
  { sheet, texts, dimensions, figures }: Laid,
  id: string,
  { chosen, lit, chalks, view }: Scene,
): void => {
  const fill = new paper.Color(id === chosen ? chalks.chalk : chalks.paper);
  fill.alpha = id === chosen ? 0.12 : 0.72;
  sheet.fillColor = fill;
  const outlined = id === lit || id === chosen;
  sheet.strokeColor = outlined ? new paper.Color(chalks.chalk) : null;
  sheet.strokeWidth = outlined ? LIT / view.scale : 0;
  dimensions.visible = outlined || view.scale >= CLOSE;
  // A name steps aside for a figure: the caption says it too.
  for (const text of texts.children) {
    text.visible = !dimensions.visible || !figures.children.some((f) => f.bounds.intersects(text.bounds));
  }
};

/** The old outlines, faint, over the pieces that have taken their place. */
const layGhosts = (ghosts: paper.Group, { ghost, placed, chalks, view }: Scene): void => {
  ghosts.removeChildren();
  const places = new Map(placed.map(({ drawing, at }) => [drawing.id, at]));
  for (const { drawing, at } of ghost) {
    const item = paperPath(drawing.silhouette);
    const place = places.get(drawing.id) ?? at;
    item.translate(new paper.Point(place.x, -place.y));
    const ink = new paper.Color(chalks.ink);
    ink.alpha = 0.35;
    item.strokeColor = ink;
    item.strokeWidth = GHOST / view.scale;
    ghosts.addChild(item);
  }
};
