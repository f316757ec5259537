import type { ReactNode } from 'react';
import { Figures, hasFraction } from '../Said.tsx';

interface Props {
  readonly text: string;
  readonly wide?: boolean;
  /** What is shown in the place of the text, whatever it is. */
  readonly instead?: ReactNode;
  readonly children: ReactNode;
}

/**
 * Sets the fractions of a field as fractions while it is not being typed in: fields can only be set in one way
 * throughout, so the text is shown in the field's place.
 */
export const Typeset = ({ text, wide = false, instead, children }: Props) => (
  <span className={wide ? 'set wide' : 'set'}>
    {children}
    {(instead || hasFraction(text)) && (
      <span className="shown" aria-hidden="true">
        <span>{instead || <Figures text={text} />}</span>
      </span>
    )}
  </span>
);
