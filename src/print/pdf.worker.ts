import regularUrl from '@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf?url';
import boldUrl from '@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf?url';
import type { PdfAnswer, PdfOrder } from './pdf/messages.ts';
import { writePdf } from './pdf.ts';

/** Writes one PDF off the page's own thread, so that the screen stays quick while it does. */
self.addEventListener('message', (event: MessageEvent<PdfOrder>) => {
  void answerTo(event.data);
});

const answerTo = async ({ set }: PdfOrder): Promise<void> => {
  try {
    const [regular, bold] = await Promise.all([fetchFont(regularUrl), fetchFont(boldUrl)]);
    const bytes = await writePdf(set, { regular, bold }, (drawn) =>
      say({ kind: 'drawn', drawn, of: set.sheets.length }),
    );
    say({ kind: 'done', bytes });
  } catch (error) {
    say({ kind: 'failed', message: error instanceof Error ? error.message : String(error) });
  }
};

const say = (answer: PdfAnswer): void => {
  const transfer = answer.kind === 'done' ? [answer.bytes.buffer as ArrayBuffer] : [];
  self.postMessage(answer, { transfer });
};

const fetchFont = async (url: string): Promise<Uint8Array> => {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`the typeface could not be loaded (${response.status})`);
  return new Uint8Array(await response.arrayBuffer());
};
