import { useEffect } from 'react';
import type { Draft } from '../../design/draft.ts';
import type { SeamReport } from '../../pattern/seam-check.ts';
import { lightSeam } from '../../state/actions.ts';
import { useStudio } from '../../state/studio.ts';
import { EXACT_DECIMALS, formatLength, formatRatio } from '../../units.ts';

/** Every seam with both its lengths, their difference, its ease and its notches. */
export const SeamTable = ({ draft }: { readonly draft: Draft }) => {
  const unit = useStudio((s) => s.wish.unit);
  const off = draft.seams.filter((seam) => !seam.meets);
  useEffect(() => () => lightSeam(null), []);
  return (
    <>
      <p className="help">
        {off.length === 0
          ? 'Both sides of every seam are measured on the pieces themselves.'
          : 'Some seams do not meet: please do not cut this pattern.'}{' '}
        Lengths in {unit === 'cm' ? 'centimetres' : 'inches'}.
      </p>
      <div className="scrolls">
        <table className="seam-check">
          <thead>
            <tr>
              <th scope="col">Seam</th>
              <th scope="col">One side</th>
              <th scope="col">The other</th>
              <th scope="col">Apart</th>
              <th scope="col">Ease</th>
              <th scope="col">Notches</th>
            </tr>
          </thead>
          <tbody>
            {draft.seams.map((report) => (
              <Row key={report.seam.id} report={report} />
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
};

const Row = ({ report: { seam, a, b, difference, notches, meets } }: { readonly report: SeamReport }) => {
  const unit = useStudio((s) => s.wish.unit);
  const length = (mm: number) => formatLength(mm, unit, { decimals: EXACT_DECIMALS[unit], bare: true });
  const isLit = useStudio((s) => s.litSeam === seam.id);
  const all = notches.unmatched.length === 0;
  return (
    <tr
      className={[meets ? '' : 'off', isLit ? 'lit' : ''].join(' ').trim() || undefined}
      onMouseEnter={() => lightSeam(seam.id)}
      onMouseLeave={() => lightSeam(null)}
    >
      <th scope="row">
        <button
          type="button"
          className="seam"
          onFocus={() => lightSeam(seam.id)}
          onBlur={() => lightSeam(null)}
          onClick={() => lightSeam(seam.id)}
        >
          {seam.name}
        </button>
      </th>
      <td>{length(a)}</td>
      <td>{length(b)}</td>
      <td>{length(Math.abs(difference))}</td>
      <td>{seam.ease === 0 ? '–' : formatRatio(seam.ease)}</td>
      <td>{all ? (notches.matched > 0 ? 'meet' : '–') : `${notches.unmatched.join(', ')}: no partner`}</td>
    </tr>
  );
};
