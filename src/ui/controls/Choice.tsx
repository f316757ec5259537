import { useId } from 'react';
import type { ChoiceParameter } from '../../caps/parameter.ts';
import { put } from '../../state/actions.ts';
import { type FieldId, readField } from '../../state/field.ts';
import { useStudio } from '../../state/studio.ts';
import { lengthNotation } from './notation.ts';
import { Problems } from './Problems.tsx';

type Asked = Pick<ChoiceParameter, 'label' | 'help' | 'options'>;

/** One of a few, all in sight. */
export const Choice = ({ field, parameter }: { readonly field: FieldId; readonly parameter: Asked }) => {
  const name = useId();
  const help = useId();
  const value = useStudio((s) => readField(s.wish, field));
  return (
    <fieldset className="control choice" data-field={field} aria-describedby={help}>
      <legend>{parameter.label}</legend>
      <div className="options">
        {parameter.options.map((option) => (
          <label key={option.value}>
            <input
              type="radio"
              name={name}
              checked={option.value === value}
              onChange={() => put(field, option.value)}
            />
            {option.label}
          </label>
        ))}
      </div>
      <p className="help" id={help}>
        {parameter.help}
      </p>
      <Problems field={field} notation={lengthNotation} />
    </fieldset>
  );
};
