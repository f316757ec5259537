import type { Spec } from '../../design/spec.ts';
import { type WornDrawing, wornDrawing } from '../../drawing/worn-drawing.ts';
import { threeQuarter } from '../../worn/gaze.ts';
import { wornNow } from './worn-now.ts';

/** The cap of a spec on its head, drawn as it is best shown in one picture; null where it cannot be drafted. */
export const pictureNow = (spec: Spec): WornDrawing | null => {
  const worn = wornNow(spec, false);
  return worn && wornDrawing(worn, threeQuarter);
};
