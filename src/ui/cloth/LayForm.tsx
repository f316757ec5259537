import { useEffect, useId, useState } from 'react';
import { lengthBought, toBuy } from '../../cloth/buying.ts';
import type { ClothLay } from '../../cloth/cloth-lay.ts';
import { layName } from '../../cloth/lay-name.ts';
import { clothNames } from '../../drawing/cut-words.ts';
import { clothsOf } from '../../pattern/cloths-of.ts';
import type { Cloth } from '../../pattern/piece.ts';
import { chooseCloth, freeAll, putCaps } from '../../state/cloth-actions.ts';
import { drafted } from '../../state/derived.ts';
import { useStudio } from '../../state/studio.ts';
import { useLayChoice } from '../../state/use-lay-choice.ts';
import { mm, ratio, words } from '../../words.ts';
import { Measure } from '../controls/Measure.tsx';
import { lengthNotation } from '../controls/notation.ts';
import { Switch } from '../controls/Switch.tsx';
import { useUnread } from '../controls/use-unread.ts';
import { Figures, Said } from '../Said.tsx';
import { Besides } from './Besides.tsx';
import { CapCount } from './CapCount.tsx';
import { LayDownload } from './LayDownload.tsx';
import { betterLay, keepLay, stopLaying } from './lay-now.ts';
import { NoRoom } from './NoRoom.tsx';
import { ScrapForm } from './ScrapForm.tsx';
import { anyUnread, type TypedCorners } from './typed-corners.ts';
import { useLay } from './use-lay.ts';

/** Which cloth is laid, how it lies, what it takes. */
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
      {lay && <Answer lay={lay} unread={onScraps ? anyUnread(scraps, corners, unit) : unreadLength} />}
      <div className="actions">
        {/* One button, so that the focus stays on it. */}
        <button type="button" onClick={progress === null ? betterLay : stopLaying}>
          {progress === null ? 'Lay it closer' : 'Stop and keep this'}
        </button>
        {progress !== null && <progress value={progress} aria-label="Laying closer" />}
        <LayDownload />
        {pins.length > 0 && (
          <button type="button" onClick={freeAll}>
            Let go of all pieces
          </button>
        )}
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

interface AnswerProps {
  readonly lay: ClothLay;
  /** A size that is typed cannot be read: the lay is that of the size before. */
  readonly unread: boolean;
}

/** How much cloth it takes, or whether the remnant will do. */
const Answer = ({ lay, unread }: AnswerProps) => {
  const unit = useStudio((s) => s.wish.unit);
  const bought = lengthBought(toBuy(lay.bought, unit), unit);
  return (
    <div className="said" aria-live="polite">
      {unread && (
        <p className="remark">What is typed above cannot be read: this is for what stood there before.</p>
      )}
      {lay.scraps.length > 0 ? (
        <p className={lay.left.length > 0 ? 'problem' : ''}>
          {lay.left.length === 0
            ? `The scraps will do.${wholeScraps(lay)}`
            : `The scraps will not do: ${namesOf(lay)} found no place.`}
        </p>
      ) : lay.remnant === null ? (
        <p>
          <Said words={words`Takes ${mm(lay.length)}: buy `} />
          <b>
            <Figures text={bought} />
          </b>
          .
        </p>
      ) : lay.left.length === 0 ? (
        <p>
          <Said words={words`It will do: the pieces take ${mm(lay.length)} of ${mm(lay.remnant)}.`} />
        </p>
      ) : (
        <p className="problem">It will not do: {namesOf(lay)} found no place.</p>
      )}
      <p className="help">
        <Said words={words`${ratio(Math.round(lay.density * 100) / 100)} of that cloth is under pieces.`} />
      </p>
      {lay.folded && lay.laid.some(({ piece }) => piece.layers === 'one of two') && (
        <p className="help">
          Some pieces are cut from one layer alone: open the cloth for them, or lay it single.
        </p>
      )}
      {lay.left.length > 0 && <NoRoom lay={lay} />}
    </div>
  );
};

/** Which scraps are kept for another time. */
const wholeScraps = ({ scraps, laid }: ClothLay): string => {
  const whole = scraps.flatMap((_, i) => (laid.some(({ at }) => at.container === i) ? [] : [i + 1]));
  if (whole.length === 0) return '';
  return whole.length === 1 ? ` Scrap ${whole[0]} stays whole.` : ` Scraps ${whole.join(', ')} stay whole.`;
};

const namesOf = ({ left }: ClothLay): string => {
  const counts = new Map<string, number>();
  for (const name of left.map(layName)) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].map(([name, count]) => (count > 1 ? `${count} × ${name}` : name)).join(', ');
};
