import type { Draft } from '../../design/draft.ts';
import { cutWords } from '../../drawing/cut-words.ts';
import { choose } from '../../state/actions.ts';
import { useStudio } from '../../state/studio.ts';
import { say } from '../../words.ts';
import { Said } from '../Said.tsx';
import { ByHand } from './ByHand.tsx';
import { Coaxing } from './Coaxing.tsx';
import { Reckoning } from './Reckoning.tsx';

/** Each figure of the chosen piece with its formula and the wearer's numbers in it. */
export const Arithmetic = ({ draft }: { readonly draft: Draft }) => {
  const { pieces } = draft.cutting;
  const chosen = useStudio((s) => s.chosen);
  const unit = useStudio((s) => s.wish.unit);
  const piece = pieces.find(({ id }) => id === chosen) ?? pieces[0];
  if (!piece) return null;
  return (
    <>
      <label className="pick">
        Piece
        <select value={piece.id} onChange={(event) => choose(event.target.value)}>
          {pieces.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <p className="cuts">{piece.cuts.map(cutWords).join(' · ')}</p>
      <dl>
        {piece.figures.map((figure) => (
          <Reckoning key={figure.name} {...figure} />
        ))}
      </dl>
      <Coaxing draft={draft} piece={piece.id} />
      {piece.notes.map((note) => (
        <p className="help" key={say(note, unit)}>
          <Said words={note} />
        </p>
      ))}
      <ByHand piece={piece} allowances={draft.cutting.allowances} />
    </>
  );
};
