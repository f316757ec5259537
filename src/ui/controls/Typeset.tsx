import type { ReactNode } from 'react';
import { Figures, hasFraction } from '../Said.tsx';

interface Props {
  readonly text: string;
  readonly wide?: boolean;
  readonly children: ReactNode;
}

/**
 * Sets the fractions of a field as fractions while it is not being typed in: fields can only be set in one way
 * throughout, so the text is shown in the field's place.
 */
export const Typeset = ({ text, wide = false, children }: Props) => (
  <span className={wide ? 'set wide' : 'set'}>
    {children}
    {hasFraction(text) && (
      <span className="shown" aria-hidden="true">
        <Figures text={text} />
      </span>
    )}
  </span>
);
