import { useId } from 'react';
import type { SwitchParameter } from '../../caps/parameter.ts';
import { put } from '../../state/actions.ts';
import { type FieldId, readField } from '../../state/field.ts';
import { useStudio } from '../../state/studio.ts';

type Asked = Pick<SwitchParameter, 'label' | 'help'>;

/** With or without. */
export const Switch = ({ field, parameter }: { readonly field: FieldId; readonly parameter: Asked }) => {
  const help = useId();
  const value = useStudio((s) => readField(s.wish, field) === true);
  return (
    <div className="control switch">
      <label>
        <input
          type="checkbox"
          checked={value}
          aria-describedby={help}
          onChange={(event) => put(field, event.target.checked)}
        />
        {parameter.label}
      </label>
      <p className="help" id={help}>
        {parameter.help}
      </p>
    </div>
  );
};
