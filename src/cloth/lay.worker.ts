import { layAnswers } from './lay-answers.ts';
import type { LayAnswer, LayOrder } from './lay-messages.ts';

/** Lays pieces off the page's own thread: an answer at once, then better ones for as long as was asked. */
self.addEventListener('message', ({ data }: MessageEvent<LayOrder>) => {
  try {
    for (const answer of layAnswers(data, () => performance.now())) say(answer);
    say({ kind: 'finished' });
  } catch (error) {
    say({ kind: 'failed', message: error instanceof Error ? error.message : String(error) });
  }
});

const say = (answer: LayAnswer): void => self.postMessage(answer);
