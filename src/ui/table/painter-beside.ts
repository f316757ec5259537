import { facesOf } from './faces.ts';
import type { ToPainter } from './painter.worker.ts';
import address from './painter.worker.ts?beside';

/** The painter, at work beside the page. */
export const startPainter = (): Worker => {
  const worker = new Worker(address, { type: 'module' });
  worker.postMessage({ faces: facesOf(document) } satisfies ToPainter);
  return worker;
};
