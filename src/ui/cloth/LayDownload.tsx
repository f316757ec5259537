import { drafted } from '../../state/derived.ts';
import { useStudio } from '../../state/studio.ts';
import { FileButton, type Write } from '../FileButton.tsx';
import { fileName } from '../hand.ts';
import { headingOf } from '../heading-of.ts';
import { today } from '../today.ts';
import { laysOf } from './lays-of.ts';

/** The lay of every cloth as pages to take to the table. */
export const LayDownload = () => (
  <FileButton
    name="Download cutting lay PDF"
    write={write}
    doing="Writing the cutting lay"
    done={() => 'The cutting lay is with your browser’s downloads, a page for each cloth.'}
    failed="The cutting lay could not be written. Please try again."
  />
);

const write: Write = async (how) => {
  const chosen = useStudio.getState();
  const draft = drafted(chosen.good);
  if (draft === null) throw new Error('a cap that cannot be sewn is not laid');
  const heading = headingOf(draft, chosen.wish.unit, today());
  const [{ laySet }, { makePdf }] = await Promise.all([
    import('../../print/lay-sheets.ts'),
    import('../../print/make-pdf.ts'),
  ]);
  const set = laySet(await laysOf(chosen, how.signal), heading);
  return { content: await makePdf(set, how), file: `${fileName(heading.cap)}, cutting lay.pdf` };
};
