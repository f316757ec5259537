import type { Words } from '../../words.ts';
import { Figures, Said } from '../Said.tsx';

interface Props {
  readonly name: string;
  readonly formula: string;
  readonly worked: Words;
}

/** One figure: its name, its formula in words, and the formula with the wearer's numbers in it. */
export const Reckoning = ({ name, formula, worked }: Props) => (
  <div className="reckoning">
    <dt>{name}</dt>
    <dd>
      <span className="formula">
        <Figures text={formula} />
      </span>
      <span className="worked">
        <Said words={worked} />
      </span>
    </dd>
  </div>
);
