import { type ReactNode, useRef, useState } from 'react';
import type { MakePdfOptions } from '../print/make-pdf.ts';
import { hand } from './hand.ts';

/** Writes a file; rejected where it is stopped or cannot be written. */
export type Write = (
  how: Required<MakePdfOptions>,
) => Promise<{ readonly content: Blob; readonly file: string }>;

type Work =
  | { readonly state: 'resting' | 'failed' }
  | { readonly state: 'working'; readonly done: number }
  | { readonly state: 'done'; readonly file: string };

interface Props {
  readonly name: string;
  readonly main?: boolean;
  /** What it is written from is not there yet. */
  readonly waits?: boolean;
  readonly write: Write;
  /** What is being done, such as "Writing the PDF". */
  readonly doing: string;
  readonly done: (file: string) => string;
  readonly failed: string;
  /** What is chosen of the file, below the button. */
  readonly children?: ReactNode;
}

/** Writes a file when it is pressed, says how far it is, can be stopped, and says where the file went. */
export const FileButton = ({
  name,
  main = false,
  waits = false,
  write,
  doing,
  done,
  failed,
  children,
}: Props) => {
  const [work, setWork] = useState<Work>({ state: 'resting' });
  const stopping = useRef<AbortController | null>(null);

  const start = async (): Promise<void> => {
    const stop = new AbortController();
    stopping.current = stop;
    setWork({ state: 'working', done: 0 });
    try {
      const onProgress = (drawn: number, of: number) => setWork({ state: 'working', done: drawn / of });
      const { content, file } = await write({ onProgress, signal: stop.signal });
      hand(content, file);
      setWork({ state: 'done', file });
    } catch (error) {
      setWork({ state: stop.signal.aborted ? 'resting' : 'failed' });
      if (!stop.signal.aborted) console.error(error);
    }
  };

  const working = work.state === 'working';
  const idle = waits || working;
  return (
    <>
      <button
        type="button"
        className={main ? 'main' : undefined}
        aria-disabled={idle}
        onClick={() => idle || start()}
      >
        {name}
      </button>
      {children}
      {working && (
        <>
          <progress value={work.done} aria-label={doing} />
          <button type="button" onClick={() => stopping.current?.abort()}>
            Stop
          </button>
        </>
      )}
      <p className="help" role="status">
        {work.state === 'done' && done(work.file)}
        {work.state === 'failed' && failed}
      </p>
    </>
  );
};
