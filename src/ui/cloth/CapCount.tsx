import { useId, useState } from 'react';
import { MOST_CUT } from '../../state/lay-choice.ts';

interface Props {
  readonly label: string;
  readonly least: number;
  readonly count: number;
  readonly onCount: (count: number) => void;
}

/**
 * How many of a cap are cut from the same cloth: a whole band's. What is typed stays until the field is left; beyond the
 * limits the nearest of them counts.
 */
export const CapCount = ({ label, least, count, onCount }: Props) => {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const wrong = typed !== null && typed !== '' && Number(typed) !== count;
  return (
    <div className="control">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        className="figures"
        type="number"
        min={least}
        max={MOST_CUT}
        value={typed ?? count}
        aria-invalid={wrong || undefined}
        onChange={({ target }) => {
          setTyped(target.value);
          const wished = target.valueAsNumber;
          const nearest = Math.min(Math.max(wished, least), MOST_CUT);
          if (Number.isInteger(nearest) && nearest !== count) onCount(nearest);
        }}
        onBlur={() => setTyped(null)}
      />
      <div className="problems" aria-live="polite">
        {wrong && (
          <p className="problem">
            A whole number from {least} to {MOST_CUT}, please.
          </p>
        )}
      </div>
    </div>
  );
};
