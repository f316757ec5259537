import { useState } from 'react';
import { styleOf } from '../../caps/registry.ts';
import { useStudio } from '../../state/studio.ts';
import { Fetched, part } from '../Fetched.tsx';

const styles = part(() => import('./StyleChooser.tsx').then((m) => m.StyleChooser));

/** Which style the cap has, and the way to the others. */
export const StylePick = () => {
  const name = useStudio((s) => styleOf(s.wish.cap.style).name);
  const [isOpen, setOpen] = useState(false);
  return (
    <details
      className="style-pick"
      open={isOpen}
      onToggle={({ currentTarget }) => {
        const { open } = currentTarget;
        void styles.fetch().then(() => setOpen(open));
      }}
    >
      <summary>
        Style <b>{name}</b>
      </summary>
      {isOpen && <Fetched part={styles} with={{}} />}
    </details>
  );
};
