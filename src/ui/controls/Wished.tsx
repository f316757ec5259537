import { applies, type FollowingParameter, type Parameter } from '../../caps/parameter.ts';
import { styleOf } from '../../caps/registry.ts';
import { type FieldId, readField } from '../../state/field.ts';
import { useStudio } from '../../state/studio.ts';
import { useProblems } from '../../state/use-problems.ts';
import { Choice } from './Choice.tsx';
import { Measure } from './Measure.tsx';
import { lengthNotation, notationOf } from './notation.ts';
import { Slider } from './Slider.tsx';
import { Switch } from './Switch.tsx';

/**
 * The control for one row of the parameter table, or nothing while its row does not apply; unless it stands in the
 * way of the wish, for then it must be there to be put right.
 */
export const Wished = ({ name }: { readonly name: string }) => {
  const parameter = useStudio((s) => styleOf(s.wish.cap.style).parameters[name]);
  const shown = useStudio((s) => applies(styleOf(s.wish.cap.style).parameters, name, s.wish.cap.values));
  const inTheWay = useProblems(`cap.${name}`).length > 0;
  return parameter !== undefined && (shown || inTheWay) ? (
    <Control field={`cap.${name}`} parameter={parameter} />
  ) : null;
};

const Control = ({ field, parameter }: { readonly field: FieldId; readonly parameter: Parameter }) => {
  switch (parameter.kind) {
    case 'length':
    case 'angle':
    case 'ratio':
    case 'count':
      return <Slider field={field} parameter={parameter} />;
    case 'choice':
      return <Choice field={field} parameter={parameter} />;
    case 'switch':
      return <Switch field={field} parameter={parameter} />;
    case 'following':
      return <Following field={field} parameter={parameter} />;
    case 'row':
      return (
        <Measure
          field={field}
          label={parameter.label}
          help={parameter.help}
          notation={notationOf(parameter)}
          empty="clears"
          wide
        />
      );
  }
};

/** A length that is that of another field until it gets its own. */
const Following = ({
  field,
  parameter,
}: {
  readonly field: FieldId;
  readonly parameter: FollowingParameter;
}) => {
  const followed = useStudio((s) => Number(readField(s.wish, `cap.${parameter.follows}`)));
  const unit = useStudio((s) => s.wish.unit);
  return (
    <Measure
      field={field}
      label={parameter.label}
      help={parameter.help}
      notation={lengthNotation}
      empty="clears"
      placeholder={lengthNotation.write(followed, unit)}
    />
  );
};
