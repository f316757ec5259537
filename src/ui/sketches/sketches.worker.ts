import type { FormPicture } from '../../drawing/form-picture.ts';
import { type SketchOrder, sketched } from './sketching.ts';

/** What was asked for in which turn, and the sketches that came of it. */
export interface ToSketcher {
  readonly turn: number;
  readonly order: SketchOrder;
}
export interface FromSketcher {
  readonly turn: number;
  readonly pictures: readonly FormPicture[];
}

/** Sketches off the page's own thread: a form for every style takes longer than a frame. */
const answer = async ({ turn, order }: ToSketcher): Promise<void> => {
  const pictures = await sketched(order);
  self.postMessage({ turn, pictures } satisfies FromSketcher);
};

self.addEventListener('message', ({ data }: MessageEvent<ToSketcher>) => {
  answer(data).catch(reportError);
});
