import type { KeyboardEvent } from 'react';
import { settle } from '../../state/actions.ts';
import { useStudio } from '../../state/studio.ts';
import type { Notation } from './notation.ts';
import { Typeset } from './Typeset.tsx';
import type { TypedField } from './use-typed.ts';

interface Props {
  readonly typed: TypedField;
  readonly notation: Notation;
  readonly id?: string;
  /** The accessible name, where no label element stands beside the field. */
  readonly name?: string;
  readonly describedBy?: string;
  readonly placeholder?: string | undefined;
  readonly wide?: boolean;
  readonly wrong?: boolean;
  readonly onStep?: (event: KeyboardEvent) => void;
}

/** A text field for figures. It is selected when entered, so that typing replaces what is there. */
export const TypedInput = ({ typed, notation, wrong = false, wide = false, onStep, ...props }: Props) => {
  const unit = useStudio((s) => s.wish.unit);
  return (
    <Typeset text={typed.text} wide={wide}>
      <input
        type="text"
        className={wide ? 'figures wide' : 'figures'}
        autoComplete="off"
        spellCheck={false}
        inputMode={notation.figures(unit) ? 'decimal' : 'text'}
        id={props.id}
        aria-label={props.name}
        aria-describedby={props.describedBy}
        aria-invalid={wrong || typed.message !== null || undefined}
        placeholder={props.placeholder}
        value={typed.text}
        onChange={(event) => typed.onInput(event.target.value)}
        onFocus={(event) => event.target.select()}
        onBlur={typed.onLeave}
        onKeyDown={(event) => {
          if (event.key === 'Enter') settle();
          onStep?.(event);
        }}
      />
    </Typeset>
  );
};
