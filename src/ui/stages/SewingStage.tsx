import { useEffect, useMemo, useState } from 'react';
import type { Draft } from '../../design/draft.ts';
import { CHILD } from '../../guide/for-a-child.ts';
import { timeWords } from '../../guide/time.ts';
import { light, lightSeam } from '../../state/actions.ts';
import { drafted } from '../../state/derived.ts';
import { useStudio } from '../../state/studio.ts';
import { ticksNow, untick } from '../../state/ticks.ts';
import { Going } from '../Going.tsx';
import { BookletDownload } from '../sewing/BookletDownload.tsx';
import { Fitting } from '../sewing/Fitting.tsx';
import { guideNow } from '../sewing/guide-now.ts';
import { KeepAwake } from '../sewing/KeepAwake.tsx';
import { ForAChild, Needs } from '../sewing/Needs.tsx';
import { StepList } from '../sewing/StepList.tsx';
import { tickId } from '../sewing/tick-id.ts';
import '../styles/sewing.css';

/** The order of work, step by step, with the wearer's own numbers. */
export const SewingStage = () => {
  const draft = useStudio((s) => drafted(s.good));
  return draft === null ? null : <Sewing draft={draft} />;
};

const Sewing = ({ draft }: { readonly draft: Draft }) => {
  const now = useMemo(() => guideNow(draft), [draft]);
  const [large, setLarge] = useState(false);
  useEffect(
    () => () => {
      light(null);
      lightSeam(null);
    },
    [],
  );
  const { style } = draft.spec.cap;
  // Another cap, or another head, is begun anew.
  const cap = useStudio((s) => `${s.capId} ${style}`);
  const wearer = useStudio((s) => s.wish.head.name);
  const { steps, minutes, tools, notions } = now.guide;
  return (
    <div className="sewing" data-large={large || undefined}>
      <Progress ids={steps.map(({ id }) => tickId(style, id))} time={timeWords(minutes)} />
      <div className="sewing-bar">
        <label className="check">
          <input type="checkbox" checked={large} onChange={(event) => setLarge(event.target.checked)} />
          Large type
        </label>
        <KeepAwake />
      </div>
      <Needs tools={tools} notions={notions} />
      <StepList now={now} style={style} key={cap} />
      <BookletDownload draft={draft} now={now} />
      <Fitting draft={draft} key={`${cap} ${wearer}`} />
      <ForAChild open={draft.finishedGirth < CHILD} />
    </div>
  );
};

const Progress = ({ ids, time }: { readonly ids: readonly string[]; readonly time: string }) => {
  const done = useStudio((s) => ids.filter((id) => ticksNow(s).includes(id)).length);
  return (
    <div className="sewing-progress">
      <p className="lead">
        {ids.length} steps, {time} by our estimate. Tick each one off: the ticks stay with the cap.
      </p>
      <p role="status">
        <b>
          {done} of {ids.length} done
        </b>
        {done > 0 && <Going onPress={() => untick(ids)}>Start again</Going>}
      </p>
    </div>
  );
};
