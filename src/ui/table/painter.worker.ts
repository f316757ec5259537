import type { Face } from './faces.ts';
import { openPainter, type Scene } from './painter.ts';
import { type Painting, type PaintOrder, toPaint } from './painting.ts';
import { takeFaces, withFaces } from './take-faces.ts';

/** What the page tells the painter: its typefaces once, then what to paint. */
export type ToPainter = PaintOrder | { readonly faces: readonly Face[] };

/** Paints the table off the page's own thread: the hand at a slider never waits for it. */
const paint = openPainter();

const answer = async (order: PaintOrder): Promise<void> => {
  const { scene, shown } = await toPaint(order);
  await facesFor(scene);
  const picture = paint(scene);
  say({ ...shown, picture }, [picture]);
};

let texts = '';

/** Faces are waited for where there are texts that were not there before. */
const facesFor = async ({ placed, chalks }: Scene): Promise<void> => {
  const now = placed.flatMap(({ drawing }) =>
    drawing.marks.flatMap((m) => (m.kind === 'text' ? m.lines : [])),
  );
  const all = [...new Set(now.join(''))].sort().join('');
  if (all === texts) return;
  await withFaces(chalks.font, all);
  texts = all;
};

self.addEventListener('message', ({ data }: MessageEvent<ToPainter>) => {
  if ('faces' in data) takeFaces(data.faces);
  else answer(data).catch(reportError);
});

const say = (painting: Painting, transfer: Transferable[]): void => self.postMessage(painting, { transfer });
