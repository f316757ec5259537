import { type ReactNode, useId } from 'react';
import type { Problem } from '../../pattern/problem.ts';
import type { FieldId } from '../../state/field.ts';
import { Figures } from '../Said.tsx';
import type { Notation } from './notation.ts';
import { Problems } from './Problems.tsx';
import { TypedInput } from './TypedInput.tsx';
import { useShownProblems } from './use-shown-problems.ts';
import type { WhenEmpty } from './use-typed.ts';

interface Props {
  readonly field: FieldId;
  readonly label: string;
  readonly notation: Notation;
  readonly help?: string;
  readonly empty?: WhenEmpty;
  readonly placeholder?: string;
  /** The field has a line of its own, for longer texts. */
  readonly wide?: boolean;
  /** The one measure of its stage that matters most. */
  readonly main?: boolean;
  readonly others?: readonly Problem[];
  /** How the text was understood, just under it. */
  readonly understood?: ReactNode;
  readonly children?: ReactNode;
}

/** A measure that is typed only: its name, its field, and what is to be said of it. */
export const Measure = ({ field, label, notation, help, empty = 'keeps', wide = false, ...props }: Props) => {
  const id = useId();
  const helpId = useId();
  const wrong = useShownProblems(field).length > 0 || (props.others?.length ?? 0) > 0;
  return (
    <div className={`control${wide ? ' wide' : ''}${props.main ? ' main' : ''}`} data-field={field}>
      <label htmlFor={id}>{label}</label>
      <TypedInput
        id={id}
        field={field}
        notation={notation}
        empty={empty}
        placeholder={props.placeholder}
        wide={wide}
        wrong={wrong}
        {...(help === undefined ? {} : { describedBy: helpId })}
      />
      {props.understood}
      {help !== undefined && (
        <p className="help" id={helpId}>
          <Figures text={help} />
        </p>
      )}
      {props.children}
      <Problems field={field} notation={notation} others={props.others ?? []} />
    </div>
  );
};
