import { useId } from 'react';
import { MOST_CUT } from '../../state/lay-choice.ts';

interface Props {
  readonly label: string;
  readonly least: number;
  readonly count: number;
  readonly onCount: (count: number) => void;
}

/** How many of a cap are cut from the same cloth: a whole band's. */
export const CapCount = ({ label, least, count, onCount }: Props) => {
  const id = useId();
  return (
    <div className="control">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        className="figures"
        type="number"
        min={least}
        max={MOST_CUT}
        value={count}
        onChange={({ target }) => {
          const wished = target.valueAsNumber;
          if (Number.isInteger(wished) && wished >= least && wished <= MOST_CUT) onCount(wished);
        }}
      />
    </div>
  );
};
