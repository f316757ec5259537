import { useEffect, useRef, useState } from 'react';
import { putWorn } from '../../state/actions.ts';
import { useStudio } from '../../state/studio.ts';
import { Fetched, part } from '../Fetched.tsx';

const preview = part(() => import('./Preview.tsx').then((m) => m.Preview));

/** Where the cap is shown worn; hidden, it is a button and nothing else. What shows it is fetched once the table stands. */
export const WornPlace = () => {
  const place = useStudio((s) => s.worn.place);
  const [stands, setStands] = useState(false);
  const hidden = place === 'hidden';
  const was = useRef(hidden);
  // What was pressed is gone: the focus goes to what came in its place.
  useEffect(() => {
    if (was.current !== hidden && document.activeElement === document.body)
      document.querySelector<HTMLElement>('.worn-place, .worn-show')?.focus();
    was.current = hidden;
  }, [hidden]);
  useEffect(() => {
    if (hidden) return;
    const wait = setTimeout(() => setStands(true), AFTER);
    return () => clearTimeout(wait);
  }, [hidden]);
  if (hidden)
    return (
      <button type="button" className="worn-show" onClick={() => putWorn({ place: 'beside' })}>
        Show it worn
      </button>
    );
  return (
    <div className="worn-place" tabIndex={-1}>
      {stands && <Fetched part={preview} with={{}} />}
    </div>
  );
};

/** The table comes first, ms. */
const AFTER = 600;
