import { useId } from 'react';
import type { FieldId } from '../../state/field.ts';
import { Figures } from '../Said.tsx';
import { notationOf } from './notation.ts';
import { Problems } from './Problems.tsx';
import type { Ranged } from './steps.ts';
import { Track } from './Track.tsx';
import { TypedInput } from './TypedInput.tsx';
import { useShownProblems } from './use-shown-problems.ts';

/**
 * A measure of the cap: its name, its number as a field, its track, and one line of help. Only the number and the track look
 * at its value: nothing else is gone through while it is dragged.
 */
export const Slider = ({ field, parameter }: { readonly field: FieldId; readonly parameter: Ranged }) => {
  const id = useId();
  const help = useId();
  const notation = notationOf(parameter);
  const wrong = useShownProblems(field).length > 0;
  return (
    <div className="control" data-field={field}>
      <label htmlFor={id}>{parameter.label}</label>
      <TypedInput
        field={field}
        notation={notation}
        name={`${parameter.label}, typed`}
        describedBy={help}
        wrong={wrong}
      />
      <Track
        field={field}
        parameter={parameter}
        notation={notation}
        id={id}
        describedBy={help}
        wrong={wrong}
      />
      <p className="help" id={help}>
        <Figures text={parameter.help} />
      </p>
      <Problems field={field} notation={notation} />
    </div>
  );
};
