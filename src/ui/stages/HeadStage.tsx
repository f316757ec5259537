import { useState } from 'react';
import { judgeGirth, judgeReadings, meanGirth, spread } from '../../head/girth.ts';
import { judgeArc, judgeBreadth, judgeLength, judgeRatio } from '../../head/shape.ts';
import { useStudio } from '../../state/studio.ts';
import { formatLength } from '../../units.ts';
import { mm, words } from '../../words.ts';
import { Measure } from '../controls/Measure.tsx';
import { lengthNotation } from '../controls/notation.ts';
import { TextField } from '../controls/TextField.tsx';
import { useUnread } from '../controls/use-unread.ts';
import { FittedElsewhere } from '../head/FittedElsewhere.tsx';
import { HeadCards } from '../head/HeadCards.tsx';
import { WhatFitted } from '../head/WhatFitted.tsx';
import { Figures, Said } from '../Said.tsx';
import { HatSizes } from './HatSizes.tsx';
import { HeadPicture } from './HeadPicture.tsx';
import { Remark } from './Remark.tsx';

/** The head: whose it is, its girth and what else was measured. */
export const HeadStage = () => {
  const { readings } = useStudio((s) => s.wish.head);
  const unit = useStudio((s) => s.wish.unit);
  const girth = meanGirth(readings);
  return (
    <div className="head-stage">
      <TextField field="head.name" label="Whose head" />
      <HeadCards />
      <WhatFitted />
      <FittedElsewhere />
      <div data-measure="girth">
        <Measure
          field="head.girth"
          label="Head girth"
          notation={lengthNotation}
          help="Tape level, just above the brow and the ears, round the fullest part behind."
          main
          understood={readings[0] !== undefined && <Understood mm={readings[0]} />}
        >
          <Remark field="head.girth" judgement={girth === null ? null : judgeGirth(girth, unit)} />
        </Measure>
        {readings.length > 0 && <MoreReadings count={readings.length} />}
      </div>
      <HeadPicture />
      <HatSizes />
      <Shape girth={girth} />
    </div>
  );
};

/** The girth in both units, unless what is typed is no length. */
const Understood = ({ mm: size }: { readonly mm: number }) =>
  useUnread('head.girth', lengthNotation) === null && (
    <p className="understood">
      = <Figures text={`${formatLength(size, 'cm')} · ${formatLength(size, 'in')}`} />
    </p>
  );

/** Room for a second and a third reading, and what they come to. */
const MoreReadings = ({ count }: { readonly count: number }) => {
  const { readings } = useStudio((s) => s.wish.head);
  return (
    <>
      <Measure
        field="head.girth.2"
        label="Second reading"
        notation={lengthNotation}
        empty="clears when left"
        placeholder="if you like"
      />
      {count > 1 && (
        <Measure
          field="head.girth.3"
          label="Third reading"
          notation={lengthNotation}
          empty="clears when left"
          placeholder="if you like"
        />
      )}
      {count > 1 && (
        <p className="said">
          <Said
            words={words`Taken together ${mm(meanGirth(readings) ?? 0)}; the readings lie ${mm(spread(readings))} apart.`}
          />
        </p>
      )}
      <Remark field="head.girth" judgement={count > 1 ? judgeReadings(readings) : null} />
    </>
  );
};

/** Optional measures that make the oval the wearer's own. */
const Shape = ({ girth }: { readonly girth: number | null }) => {
  const { length, breadth, arc } = useStudio((s) => s.wish.head);
  const [open] = useState(length !== null || breadth !== null || arc !== null);
  return (
    <details open={open}>
      <summary>Shape of the head, if measured</summary>
      <div data-measure="length">
        <Measure
          field="head.length"
          label="Head length"
          notation={lengthNotation}
          help="Straight from brow to back, between two books held upright."
          empty="clears"
        />
        <Remark field="head.length" judgement={length === null ? null : judgeLength(length, girth)} />
      </div>
      <div data-measure="breadth">
        <Measure
          field="head.breadth"
          label="Head breadth"
          notation={lengthNotation}
          help="Straight across above the ears. With the length it gives the front of the oval, which the visor follows."
          empty="clears"
        />
        <Remark field="head.breadth" judgement={breadth === null ? null : judgeBreadth(breadth, girth)} />
        <Remark
          field="head.breadth"
          judgement={length === null || breadth === null ? null : judgeRatio(breadth / length)}
        />
      </div>
      <div data-measure="arc">
        <Measure
          field="head.arc"
          label="Over the head"
          notation={lengthNotation}
          help="From edge to edge over the top, where the cap is to sit. Crowns of gores follow it; left empty it is estimated from the girth."
          empty="clears"
        />
        <Remark field="head.arc" judgement={arc === null ? null : judgeArc(arc, girth)} />
      </div>
    </details>
  );
};
