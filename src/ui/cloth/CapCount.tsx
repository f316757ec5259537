import { useId } from 'react';

const MOST_CAPS = 20;

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
        max={MOST_CAPS}
        value={count}
        onChange={({ target }) => {
          const wished = target.valueAsNumber;
          if (Number.isInteger(wished) && wished >= least && wished <= MOST_CAPS) onCount(wished);
        }}
      />
    </div>
  );
};
