import { lengthBought, toBuy } from '../../cloth/buying.ts';
import type { ClothLay } from '../../cloth/cloth-lay.ts';
import { layName } from '../../cloth/lay-name.ts';
import { STRIPES } from '../../cloth/stripes.ts';
import { useStudio } from '../../state/studio.ts';
import { mm, ratio, words } from '../../words.ts';
import { Figures, Said } from '../Said.tsx';
import { NoRoom } from './NoRoom.tsx';

interface Props {
  readonly lay: ClothLay;
  /** A size that is typed cannot be read: the lay is that of the size before. */
  readonly unread: boolean;
}

/** How much cloth it takes, or whether the remnant will do. */
export const LayAnswer = ({ lay, unread }: Props) => {
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
      <p className="help">{STRIPES}</p>
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
