import { type Dressed, type DressOrder, dress } from './dressing.ts';

/** Puts caps on heads off the page's own thread: the hand at a slider never waits for it. */
const answer = async (order: DressOrder): Promise<void> => {
  const dressed = await dress(order);
  self.postMessage(dressed, { transfer: dressed === null ? [] : buffersOf(dressed) });
};

/** What is handed over rather than copied. */
const buffersOf = ({ cloth, head }: Dressed): Transferable[] =>
  [...Object.values(cloth), ...Object.values(head ?? {})].flatMap((part) =>
    ArrayBuffer.isView(part) ? [part.buffer as ArrayBuffer] : [],
  );

self.addEventListener('message', ({ data }: MessageEvent<DressOrder>) => {
  answer(data).catch(reportError);
});
