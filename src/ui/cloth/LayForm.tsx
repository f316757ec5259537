import { useEffect, useId, useState } from 'react';
import { clothNames } from '../../drawing/cut-words.ts';
import { clothsOf } from '../../pattern/cloths-of.ts';
import type { Cloth } from '../../pattern/piece.ts';
import { chooseCloth, freeAll, putCaps } from '../../state/cloth-actions.ts';
import { drafted } from '../../state/derived.ts';
import { useStudio } from '../../state/studio.ts';
import { useLayChoice } from '../../state/use-lay-choice.ts';
import { Measure } from '../controls/Measure.tsx';
import { lengthNotation } from '../controls/notation.ts';
import { Switch } from '../controls/Switch.tsx';
import { useUnread } from '../controls/use-unread.ts';
import { Going } from '../Going.tsx';
import { Besides } from './Besides.tsx';
import { CapCount } from './CapCount.tsx';
import { LayAnswer } from './LayAnswer.tsx';
import { LayDownload } from './LayDownload.tsx';
import { betterLay, keepLay, stopLaying } from './lay-now.ts';
import { ScrapForm } from './ScrapForm.tsx';
import { anyUnread, type TypedCorners } from './typed-corners.ts';
import { useLay } from './use-lay.ts';

/** Which cloth is laid, what there is of it and what is cut from it. */
export const LayForm = () => {
  useEffect(keepLay, []);
  const { cloth, here, pins } = useLayChoice();
  const { lay, progress } = useLay();
  const unit = useStudio((s) => s.wish.unit);
  const scraps = useStudio((s) => s.wish.cloths[cloth].scraps);
  const [corners, setCorners] = useState<TypedCorners>(new Map());
  const onScraps = scraps.length > 0;
  const unreadLength = useUnread(`cloth.${cloth}.length`, lengthNotation) !== null;
  return (
    <section className="lay-form" aria-label="Cutting lay">
      <Which chosen={cloth} />
      {!onScraps && (
        <>
          <Switch field={`cloth.${cloth}.folded`} parameter={FOLDED} />
          <Measure
            field={`cloth.${cloth}.length`}
            label="Length at hand"
            notation={lengthNotation}
            empty="clears"
            placeholder="off the bolt"
            help="Of a remnant. Left empty, the lay says how much to buy."
          />
        </>
      )}
      <CapCount label="Caps in this lay" least={1} count={here} onCount={putCaps} />
      <Besides />
      <ScrapForm cloth={cloth} typed={corners} onTyped={setCorners} />
      {lay && <LayAnswer lay={lay} unread={onScraps ? anyUnread(scraps, corners, unit) : unreadLength} />}
      <div className="actions">
        {/* One button, so that the focus stays on it. */}
        <button type="button" onClick={progress === null ? betterLay : stopLaying}>
          {progress === null ? 'Lay it closer' : 'Stop and keep this'}
        </button>
        {progress !== null && <progress value={progress} aria-label="Laying closer" />}
        <LayDownload />
        {pins.length > 0 && <Going onPress={freeAll}>Let go of all pieces</Going>}
      </div>
    </section>
  );
};

const FOLDED = {
  label: 'Folded along its length',
  help: 'Two layers at once: pairs are cut together, and halves on the fold.',
};

const Which = ({ chosen }: { readonly chosen: Cloth }) => {
  const name = useId();
  const pieces = useStudio((s) => drafted(s.good)?.cutting.pieces);
  return (
    <fieldset className="control choice">
      <legend>Lay</legend>
      <div className="options">
        {clothsOf(pieces ?? []).map((cloth) => (
          <label key={cloth}>
            <input type="radio" name={name} checked={cloth === chosen} onChange={() => chooseCloth(cloth)} />
            {clothNames[cloth]}
          </label>
        ))}
      </div>
    </fieldset>
  );
};
