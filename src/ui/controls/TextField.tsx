import { useId } from 'react';
import { LONGEST_NAME } from '../../design/reading.ts';
import { change, settle } from '../../state/actions.ts';
import { type FieldId, readField } from '../../state/field.ts';
import { useStudio } from '../../state/studio.ts';

/** A name: whose head, which cap. */
export const TextField = ({ field, label }: { readonly field: FieldId; readonly label: string }) => {
  const id = useId();
  const value = useStudio((s) => String(readField(s.wish, field)));
  return (
    <div className="control wide">
      <label htmlFor={id}>{label}</label>
      <input
        type="text"
        id={id}
        className="name"
        autoComplete="off"
        maxLength={LONGEST_NAME}
        value={value}
        onChange={(event) => change(field, event.target.value)}
        onBlur={settle}
      />
    </div>
  );
};
