import { useEffect, useRef } from 'react';
import { open } from '../../state/actions.ts';
import { derived } from '../../state/derived.ts';
import { type Detail, useStudio } from '../../state/studio.ts';
import { Arithmetic } from './Arithmetic.tsx';
import { CrownGirth, InsideGirth, TipSize } from './Girths.tsx';
import { SeamTable } from './SeamTable.tsx';

const titles: Readonly<Record<Detail, string>> = {
  inside: 'Finished inside girth',
  crown: 'Crown girth',
  tip: 'The tip',
  seams: 'Seam check',
  piece: 'The arithmetic',
};

/** How a number of the tally comes about, beside the table. Escape closes it. */
export const DetailPanel = () => {
  const detail = useStudio((s) => s.detail);
  const draft = useStudio((s) => derived(s.good).draft);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (detail !== null) heading.current?.focus();
  }, [detail]);
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.key === 'Escape' && !event.defaultPrevented) open(null);
    };
    if (detail === null) return;
    document.addEventListener('keydown', onKeyDown);
    return () => document.removeEventListener('keydown', onKeyDown);
  }, [detail]);
  if (detail === null || draft === null) return <aside id="detail" hidden />;
  return (
    <aside id="detail" className={`detail ${detail}`} aria-labelledby="detail-title">
      <div className="detail-head">
        <h2 id="detail-title" ref={heading} tabIndex={-1}>
          {titles[detail]}
        </h2>
        <button type="button" onClick={() => open(null)}>
          Close
        </button>
      </div>
      {detail === 'inside' && <InsideGirth draft={draft} />}
      {detail === 'crown' && <CrownGirth draft={draft} />}
      {detail === 'tip' && <TipSize draft={draft} />}
      {detail === 'seams' && <SeamTable draft={draft} />}
      {detail === 'piece' && <Arithmetic draft={draft} />}
    </aside>
  );
};
