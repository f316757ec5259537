import { type WornDrawing, wornDrawing } from '../../drawing/worn-drawing.ts';
import { type Gaze, looksInto } from '../../worn/gaze.ts';
import { lookedInto, type WornNow } from './worn-now.ts';

/** The line drawing of a cap from one side; from below with what lies in it. */
export const drawnFrom = (worn: WornNow, gaze: Gaze): WornDrawing =>
  wornDrawing(looksInto(gaze) ? lookedInto(worn) : worn, gaze);
