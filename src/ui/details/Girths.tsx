import type { Draft } from '../../design/derive.ts';
import { exactMm, type Quantity, ratio, type Words, words } from '../../words.ts';
import { Reckoning } from './Reckoning.tsx';

interface Props {
  readonly draft: Draft;
}

/** From the readings of the tape to the finished inside of the cap. */
export const InsideGirth = ({ draft: { spec, headGirth, finishedGirth } }: Props) => {
  const { readings } = spec.head;
  const { ease } = spec.cap.values;
  return (
    <dl>
      {readings.length > 1 && (
        <Reckoning
          name="Head girth"
          formula="mean of the readings"
          worked={words`(${sum(readings)}) ÷ ${`${readings.length}`} = ${exactMm(headGirth)}`}
        />
      )}
      <Reckoning
        name="Inside, finished"
        formula="head girth + ease"
        worked={words`${exactMm(headGirth)} + ${exactMm(ease)} = ${exactMm(finishedGirth)}`}
      />
    </dl>
  );
};

const sum = (readings: readonly number[]): Words =>
  readings.flatMap((reading, i): (string | Quantity)[] => [...(i > 0 ? [' + '] : []), exactMm(reading)]);

/** From the opening to the edge of the top. */
export const CrownGirth = ({ draft: { spec, finishedGirth, crownGirth } }: Props) => (
  <dl>
    <Reckoning
      name="Crown girth"
      formula="inside girth + crown fullness"
      worked={words`${exactMm(finishedGirth)} + ${exactMm(spec.cap.values.crownFullness)} = ${exactMm(crownGirth)}`}
    />
  </dl>
);

/** From the crown girth to the size of the top. */
export const TipSize = ({ draft: { spec, crownGirth, tip } }: Props) => (
  <dl>
    {tip.length === tip.breadth ? (
      <Reckoning
        name="Tip, across"
        formula="crown girth ÷ π"
        worked={words`${exactMm(crownGirth)} ÷ 3.1416 = ${exactMm(tip.length)}`}
      />
    ) : (
      <Reckoning
        name="Tip, length and breadth"
        formula="the oval of that girth and shape"
        worked={words`an ellipse ${exactMm(crownGirth)} round, breadth ${ratio(spec.cap.values.tipRatio)} of length: ${exactMm(tip.length)} × ${exactMm(tip.breadth)}`}
      />
    )}
  </dl>
);
