import { drafted } from '../../state/derived.ts';
import { useStudio } from '../../state/studio.ts';
import { mm, thickness, words } from '../../words.ts';
import { Said } from '../Said.tsx';

/** What the thickness of the cloth does to the girth, in plain sight. */
export const TurnRemark = () => {
  const draft = useStudio((s) => drafted(s.good));
  if (draft === null || draft.turn.shell === 0) return null;
  const { finishedGirth, turn } = draft;
  return (
    <p className="said">
      <Said
        words={words`Finished inside girth ${mm(finishedGirth)}; the shell is stitched at ${mm(finishedGirth + turn.shell)} because ${thickness(turn.depth)} of cloth goes round.`}
      />
    </p>
  );
};
