import { settle } from '../../state/actions.ts';
import { isDragged } from '../../state/dragged.ts';
import type { FieldId } from '../../state/field.ts';
import { useStudio } from '../../state/studio.ts';
import { Dragged } from './Dragged.tsx';
import type { Notation } from './notation.ts';
import { Typeset } from './Typeset.tsx';
import { useTyped, type WhenEmpty } from './use-typed.ts';
import { useUnread } from './use-unread.ts';

interface Props {
  readonly field: FieldId;
  readonly notation: Notation;
  readonly empty?: WhenEmpty;
  readonly id?: string;
  /** The accessible name, where no label element stands beside the field. */
  readonly name?: string;
  readonly describedBy?: string;
  readonly placeholder?: string | undefined;
  readonly wide?: boolean;
  readonly wrong?: boolean;
}

/** A text field for figures. It is selected when entered, so that typing replaces what is there. */
export const TypedInput = ({
  field,
  notation,
  empty = 'keeps',
  wrong = false,
  wide = false,
  ...props
}: Props) => {
  const typed = useTyped(field, notation, empty);
  const unread = useUnread(field, notation);
  const dragged = useStudio((s) => isDragged(s, field));
  const unit = useStudio((s) => s.wish.unit);
  return (
    <Typeset text={typed.text} wide={wide} instead={dragged && <Dragged field={field} notation={notation} />}>
      <input
        type="text"
        className={wide ? 'figures wide' : 'figures'}
        autoComplete="off"
        spellCheck={false}
        inputMode={notation.figures(unit) ? 'decimal' : 'text'}
        id={props.id}
        aria-label={props.name}
        aria-describedby={props.describedBy}
        aria-invalid={wrong || unread !== null || undefined}
        placeholder={props.placeholder}
        value={typed.text}
        onChange={(event) => typed.onInput(event.target.value)}
        onFocus={(event) => event.target.select()}
        onBlur={typed.onLeave}
        onKeyDown={(event) => {
          if (event.key === 'Enter') settle();
        }}
      />
    </Typeset>
  );
};
