import { type FieldId, readField } from '../../state/field.ts';
import { useStudio } from '../../state/studio.ts';
import { Figures } from '../Said.tsx';
import type { Notation } from './notation.ts';

interface Props {
  readonly field: FieldId;
  readonly notation: Notation;
}

/** The number of a field while it is dragged. A text is changed with less ado than a field is. */
export const Dragged = ({ field, notation }: Props) => (
  <Figures text={useStudio(({ wish }) => notation.write(readField(wish, field), wish.unit))} />
);
