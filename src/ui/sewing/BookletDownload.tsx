import type { Draft } from '../../design/draft.ts';
import { useStudio } from '../../state/studio.ts';
import { FileButton, type Write } from '../FileButton.tsx';
import { fileName } from '../hand.ts';
import { bookletContent } from './booklet-content.ts';
import type { GuideNow } from './guide-now.ts';

/** The order of work as a PDF of its own. */
export const BookletDownload = ({ draft, now }: { readonly draft: Draft; readonly now: GuideNow }) => {
  const unit = useStudio((s) => s.wish.unit);
  const write: Write = async (how) => {
    const [{ booklet }, { makePdf }] = await Promise.all([
      import('../../print/booklet/booklet.ts'),
      import('../../print/make-pdf.ts'),
    ]);
    const content = await makePdf(booklet(bookletContent(draft, now, unit)), how);
    return { content, file: `${fileName(draft.spec.cap.name)}, sewing.pdf` };
  };
  return (
    <div className="booklet">
      <FileButton
        name="Download sewing booklet PDF"
        write={write}
        doing="Writing the booklet"
        done={(file) => `“${file}” is with your browser’s downloads.`}
        failed="The booklet could not be written. Please try again."
      />
    </div>
  );
};
