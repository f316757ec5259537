import { useRef, useState } from 'react';
import type { Draft } from '../../design/draft.ts';
import { useStudio } from '../../state/studio.ts';
import { fileName, hand } from '../hand.ts';
import { bookletContent } from './booklet-content.ts';
import type { GuideNow } from './guide-now.ts';

type Work =
  | { readonly state: 'resting' }
  | { readonly state: 'working'; readonly done: number }
  | { readonly state: 'done'; readonly file: string }
  | { readonly state: 'failed' };

/** Writes the order of work as a PDF of its own. */
export const BookletDownload = ({ draft, now }: { readonly draft: Draft; readonly now: GuideNow }) => {
  const unit = useStudio((s) => s.wish.unit);
  const [work, setWork] = useState<Work>({ state: 'resting' });
  const stopping = useRef<AbortController | null>(null);

  const start = async () => {
    const stop = new AbortController();
    stopping.current = stop;
    setWork({ state: 'working', done: 0 });
    try {
      const [{ booklet }, { makePdf }] = await Promise.all([
        import('../../print/booklet/booklet.ts'),
        import('../../print/make-pdf.ts'),
      ]);
      const onProgress = (done: number, of: number) => setWork({ state: 'working', done: done / of });
      const pdf = await makePdf(booklet(bookletContent(draft, now, unit)), {
        onProgress,
        signal: stop.signal,
      });
      const file = `${fileName(draft.spec.cap.name)}, sewing.pdf`;
      hand(pdf, file);
      setWork({ state: 'done', file });
    } catch (error) {
      setWork({ state: stop.signal.aborted ? 'resting' : 'failed' });
      if (!stop.signal.aborted) console.error(error);
    }
  };

  const working = work.state === 'working';
  return (
    <div className="booklet">
      <button type="button" aria-disabled={working} onClick={() => working || start()}>
        Download sewing booklet PDF
      </button>
      {working && (
        <>
          <progress value={work.done} aria-label="Writing the booklet" />
          <button type="button" onClick={() => stopping.current?.abort()}>
            Stop
          </button>
        </>
      )}
      <p className="help" role="status">
        {work.state === 'done' && `“${work.file}” is with your browser’s downloads.`}
        {work.state === 'failed' && 'The booklet could not be written. Please try again.'}
      </p>
    </div>
  );
};
