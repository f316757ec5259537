import { openingOf } from '../../caps/opening.ts';
import { shellFigure } from '../../caps/parts/girth-figures.ts';
import type { Draft } from '../../design/draft.ts';
import { exactMm, type Quantity, type Words, words } from '../../words.ts';
import { Reckoning } from './Reckoning.tsx';

interface Props {
  readonly draft: Draft;
}

/** From the readings of the tape to the finished inside of the cap, and from there to the shell where cloth goes round. */
export const InsideGirth = ({ draft: { spec, head, finishedGirth } }: Props) => {
  const { readings } = spec.head;
  const ease = finishedGirth - head.girth;
  return (
    <dl>
      {readings.length > 1 && (
        <Reckoning
          name="Head girth"
          formula="mean of the readings"
          worked={words`(${sum(readings)}) ÷ ${`${readings.length}`} = ${exactMm(head.girth)}`}
        />
      )}
      <Reckoning
        name="Inside, finished"
        formula="head girth + ease"
        worked={words`${exactMm(head.girth)} + ${exactMm(ease)} = ${exactMm(finishedGirth)}`}
      />
      {shellFigure(openingOf(head, ease)).map(({ name, formula, worked }) => (
        <Reckoning key={name} name={name} formula={formula} worked={worked} />
      ))}
    </dl>
  );
};

const sum = (readings: readonly number[]): Words =>
  readings.flatMap((reading, i): (string | Quantity)[] => [...(i > 0 ? [' + '] : []), exactMm(reading)]);
