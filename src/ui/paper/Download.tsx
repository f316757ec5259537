import { useState } from 'react';
import type { SheetSet } from '../../print/sheet.ts';
import { papers } from '../../print/sheet-size.ts';
import { useStudio } from '../../state/studio.ts';
import { FileButton, type Write } from '../FileButton.tsx';
import { fileName } from '../hand.ts';
import { useSheets } from './use-sheets.ts';

/** The pattern as a PDF, with its lays and its booklet after it where they are wished. */
export const Download = ({ ready }: { readonly ready: boolean }) => {
  const { set, stale } = useSheets();
  const [lays, setLays] = useState(false);
  const [sewing, setSewing] = useState(false);
  return (
    <div className="download">
      <FileButton
        name="Download pattern PDF"
        main
        waits={!ready || stale || set === null}
        write={(how) => write(set!, { lays, sewing }, how)}
        doing="Writing the PDF"
        done={(file) => `“${file}” is with your browser’s downloads. Print it at 100 %.`}
        failed="The PDF could not be written. Nothing of your work is lost; please try again."
      >
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
      </FileButton>
    </div>
  );
};

interface Besides {
  readonly lays: boolean;
  readonly sewing: boolean;
}

/** All of one cap: the one that the sheets are of, whatever is changed while they are written. */
const write = async (
  set: SheetSet,
  { lays, sewing }: Besides,
  how: Parameters<Write>[0],
): ReturnType<Write> => {
  const now = useStudio.getState();
  const { makePdf } = await import('../../print/make-pdf.ts');
  const laid = lays
    ? await (await import('../cloth/with-lays.ts')).sheetsWithLays(set, now, how.signal)
    : set;
  const whole = sewing ? (await import('../sewing/with-booklet.ts')).sheetsWithBooklet(laid, now) : laid;
  const file = `${fileName(set.heading.cap)}, ${papers[set.paper.paper].label.split(',')[0]}.pdf`;
  return { content: await makePdf(whole, how), file };
};
