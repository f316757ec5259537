import type { ClothLay } from '../../cloth/cloth-lay.ts';
import { layName } from '../../cloth/lay-name.ts';
import { isOfFirstCap } from '../../cloth/lay-pieces.ts';
import { mayLieAcross } from '../../cloth/rotations-on.ts';
import { type TooLarge, tooLarge } from '../../cloth/too-large.ts';
import { put } from '../../state/actions.ts';
import { useStudio } from '../../state/studio.ts';
import { mm, words } from '../../words.ts';
import { Said } from '../Said.tsx';

/** Where pieces found no place: which of them are larger than the cloth, and what would help. */
export const NoRoom = ({ lay }: { readonly lay: ClothLay }) => {
  const offersAcross = useStudio(({ wish: { cloths } }) => {
    const spec = cloths[lay.cloth];
    return !spec.cross && mayLieAcross({ ...spec, cross: true });
  });
  const large = tooLarge(lay);
  const turned = large.filter(({ fitsAcross }) => fitsAcross);
  const ofGrain = turned.find(({ piece }) => isOfFirstCap(piece) && piece.piece.grainBy !== undefined);
  return (
    <>
      {large.map((one) => (
        <p className="help" key={one.piece.id}>
          <Said words={size(one)} />
        </p>
      ))}
      <div className="actions">
        {ofGrain && (
          <button type="button" onClick={() => put(`cap.${ofGrain.piece.piece.grainBy}`, 'across')}>
            Cut the {ofGrain.piece.piece.name.toLowerCase()} across the grain
          </button>
        )}
        {turned.length > 0 && offersAcross && (
          <button type="button" onClick={() => put(`cloth.${lay.cloth}.cross`, true)}>
            Let pieces lie across
          </button>
        )}
        {lay.folded && (
          <button type="button" onClick={() => put(`cloth.${lay.cloth}.folded`, false)}>
            Lay it single
          </button>
        )}
        {lay.remnant !== null && (
          <button type="button" onClick={() => put(`cloth.${lay.cloth}.length`, null)}>
            Lay it off a bolt instead
          </button>
        )}
      </div>
    </>
  );
};

const size = ({ piece, along, across }: TooLarge) =>
  words`${layName(piece)} takes ${mm(along)} along its grain and ${mm(across)} across: more than this cloth has.`;
