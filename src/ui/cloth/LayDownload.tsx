import { useState } from 'react';
import { drafted } from '../../state/derived.ts';
import { useStudio } from '../../state/studio.ts';
import { fileName, hand } from '../hand.ts';
import { today } from '../today.ts';
import { capsNow, layNow } from './lay-now.ts';
import { laysOf } from './needs.ts';

type Work = 'resting' | 'working' | 'done' | 'failed';

/** The lay of every cloth as pages to take to the table. */
export const LayDownload = () => {
  const [work, setWork] = useState<Work>('resting');
  const start = async (): Promise<void> => {
    const { good, wish } = useStudio.getState();
    const draft = drafted(good);
    if (draft === null) return;
    setWork('working');
    try {
      const [{ laySet }, { makePdf }] = await Promise.all([
        import('../../print/lay-sheets.ts'),
        import('../../print/make-pdf.ts'),
      ]);
      const heading = {
        cap: good.cap.name.trim(),
        wearer: good.head.name.trim(),
        finishedGirth: draft.finishedGirth,
        date: today(),
        unit: wish.unit,
      };
      const lays = await laysOf(await capsNow(), good.cloths, layNow().lay);
      hand(await makePdf(laySet(lays, heading)), `${fileName(heading.cap)}, cutting lay.pdf`);
      setWork('done');
    } catch (error) {
      console.error(error);
      setWork('failed');
    }
  };
  const working = work === 'working';
  return (
    <>
      <button type="button" aria-disabled={working} onClick={() => working || start()}>
        Download cutting lay PDF
      </button>
      <p className="help" role="status">
        {work === 'done' && 'The cutting lay is with your browser’s downloads, a page for each cloth.'}
        {work === 'failed' && 'The cutting lay could not be written. Please try again.'}
      </p>
    </>
  );
};
