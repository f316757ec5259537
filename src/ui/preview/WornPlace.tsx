import { useEffect, useState } from 'react';
import { putWorn } from '../../state/actions.ts';
import { useStudio } from '../../state/studio.ts';
import { Fetched, part } from '../Fetched.tsx';

const preview = part(() => import('./Preview.tsx').then((m) => m.Preview));

/** Where the cap is shown worn; hidden, it is a button and nothing else. What shows it is fetched once the table stands. */
export const WornPlace = () => {
  const place = useStudio((s) => s.worn.place);
  const [stands, setStands] = useState(false);
  useEffect(() => {
    if (place === 'hidden') return;
    const wait = setTimeout(() => setStands(true), AFTER);
    return () => clearTimeout(wait);
  }, [place]);
  if (place === 'hidden')
    return (
      <button type="button" className="worn-show" onClick={() => putWorn({ place: 'beside' })}>
        Show it worn
      </button>
    );
  return <div className="worn-place">{stands && <Fetched part={preview} with={{}} />}</div>;
};

/** The table comes first, ms. */
const AFTER = 600;
