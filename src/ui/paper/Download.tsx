import { useRef, useState } from 'react';
import { papers } from '../../print/sheet-size.ts';
import { fileName, hand } from '../hand.ts';
import { useSheets } from './use-sheets.ts';

type Work =
  | { readonly state: 'resting' }
  | { readonly state: 'working'; readonly done: number }
  | { readonly state: 'done'; readonly file: string }
  | { readonly state: 'failed' };

/** Writes the pattern as a PDF, says how far it is, can be stopped, and says where the file went. */
export const Download = ({ ready }: { readonly ready: boolean }) => {
  const { set, stale } = useSheets();
  const [work, setWork] = useState<Work>({ state: 'resting' });
  const [lays, setLays] = useState(false);
  const [sewing, setSewing] = useState(false);
  const stopping = useRef<AbortController | null>(null);

  const start = async () => {
    if (set === null) return;
    const stop = new AbortController();
    stopping.current = stop;
    setWork({ state: 'working', done: 0 });
    try {
      const { makePdf } = await import('../../print/make-pdf.ts');
      const onProgress = (drawn: number, of: number) => setWork({ state: 'working', done: drawn / of });
      const laid = lays ? await (await import('../cloth/with-lays.ts')).sheetsWithLays(set) : set;
      const whole = sewing ? (await import('../sewing/with-booklet.ts')).sheetsWithBooklet(laid) : laid;
      const pdf = await makePdf(whole, { onProgress, signal: stop.signal });
      const file = `${fileName(set.heading.cap)}, ${papers[set.paper.paper].label.split(',')[0]}.pdf`;
      hand(pdf, file);
      setWork({ state: 'done', file });
    } catch (error) {
      setWork({ state: stop.signal.aborted ? 'resting' : 'failed' });
      if (!stop.signal.aborted) console.error(error);
    }
  };

  const working = work.state === 'working';
  const waits = !ready || stale || working;
  return (
    <div className="download">
      <button type="button" className="main" aria-disabled={waits} onClick={() => waits || start()}>
        Download pattern PDF
      </button>
      {set !== null && papers[set.paper.paper].kind === 'sheets' && (
        <>
          <label>
            <input type="checkbox" checked={lays} onChange={(event) => setLays(event.target.checked)} />
            With the cutting lay
          </label>
          <label>
            <input type="checkbox" checked={sewing} onChange={(event) => setSewing(event.target.checked)} />
            With the sewing booklet
          </label>
        </>
      )}
      {working && (
        <>
          <progress value={work.done} aria-label="Writing the PDF" />
          <button type="button" onClick={() => stopping.current?.abort()}>
            Stop
          </button>
        </>
      )}
      <p className="help" role="status">
        {work.state === 'done' && `“${work.file}” is with your browser’s downloads. Print it at 100 %.`}
        {work.state === 'failed' &&
          'The PDF could not be written. Nothing of your work is lost; please try again.'}
      </p>
    </div>
  );
};
