import type { ReactNode } from 'react';
import { focusHeading } from './focus.ts';

interface Props {
  readonly onPress: () => void;
  readonly children: ReactNode;
}

/** A button that goes away by being pressed: the focus moves on to the heading that it stands under. */
export const Going = ({ onPress, children }: Props) => (
  <button
    type="button"
    onClick={({ currentTarget }) => {
      focusHeading(currentTarget);
      onPress();
    }}
  >
    {children}
  </button>
);
