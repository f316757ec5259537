import type { PdfAnswer, PdfOrder } from './pdf/messages.ts';
import address from './pdf.worker.ts?beside';
import type { SheetSet } from './sheet.ts';

export interface MakePdfOptions {
  /** Told after each sheet how many of how many are drawn. */
  readonly onProgress?: (drawn: number, of: number) => void;
  /** Stops the work; the promise is then rejected with the signal's reason. */
  readonly signal?: AbortSignal;
}

/** Writes the sheets as a PDF in a worker of its own. Rejected where the set has problems or loading fails. */
export const makePdf = (set: SheetSet, { onProgress, signal }: MakePdfOptions = {}): Promise<Blob> =>
  new Promise((resolve, reject) => {
    signal?.throwIfAborted();
    const worker = new Worker(address, { type: 'module' });
    const stop = (): void => finish(() => reject(signal?.reason));
    const finish = (settle: () => void): void => {
      worker.terminate();
      signal?.removeEventListener('abort', stop);
      settle();
    };
    signal?.addEventListener('abort', stop);
    worker.addEventListener('error', (event) =>
      finish(() => reject(new Error(event.message || 'the PDF writer could not be loaded'))),
    );
    worker.addEventListener('message', ({ data }: MessageEvent<PdfAnswer>) => {
      if (data.kind === 'drawn') onProgress?.(data.drawn, data.of);
      else if (data.kind === 'failed') finish(() => reject(new Error(data.message)));
      else finish(() => resolve(new Blob([data.bytes as BlobPart], { type: 'application/pdf' })));
    });
    const order: PdfOrder = { set };
    worker.postMessage(order);
  });
