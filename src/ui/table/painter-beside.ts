import { facesOf } from './faces.ts';
import type { ToPainter } from './painter.worker.ts';
import address from './painter.worker.ts?beside';
import type { Painting, PaintOrder } from './painting.ts';

/** The painter, at work beside the page. It is given one order at a time. */
export interface PainterBeside {
  readonly ask: (order: PaintOrder) => void;
  readonly close: () => void;
}

export interface PainterTells {
  readonly painted: (painting: Painting) => void;
  /** It cannot work. */
  readonly failed: () => void;
}

export const openPainterBeside = ({ painted, failed }: PainterTells): PainterBeside => {
  const worker = new Worker(address, { type: 'module' });
  const tell = (message: ToPainter): void => worker.postMessage(message);
  worker.addEventListener('message', ({ data }: MessageEvent<Painting>) => painted(data));
  worker.addEventListener('error', failed);
  tell({ kind: 'faces', faces: facesOf(document) });
  return { ask: (order) => tell({ kind: 'paint', order }), close: () => worker.terminate() };
};
