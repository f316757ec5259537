import { clothNames } from '../../drawing/cut-words.ts';
import { allCloths, type Cloth, type Cut, type Piece } from '../../pattern/piece.ts';
import { choose, light } from '../../state/actions.ts';
import { drafted } from '../../state/derived.ts';
import { useStudio } from '../../state/studio.ts';
import { AllowanceAdvice } from '../cloth/AllowanceAdvice.tsx';
import { ClothForm } from '../cloth/ClothForm.tsx';
import { LayForm } from '../cloth/LayForm.tsx';
import { Shopping } from '../cloth/Shopping.tsx';
import { TurnRemark } from '../cloth/TurnRemark.tsx';

interface Row {
  readonly piece: Piece;
  readonly cut: Cut;
}

const NONE: readonly Piece[] = [];

/** What to cut, cloth by cloth. */
export const ClothStage = () => {
  const pieces = useStudio((s) => drafted(s.good)?.cutting.pieces ?? NONE);
  return (
    <>
      <LayForm />
      {allCloths.map((cloth) => (
        <details key={cloth} open={cloth === 'outer'}>
          <summary>{clothNames[cloth]}</summary>
          <ClothForm cloth={cloth} />
          {cloth === 'outer' && <TurnRemark />}
          {cloth === 'outer' && <AllowanceAdvice />}
        </details>
      ))}
      <Shopping />
      <p className="lead">
        What to cut, cloth by cloth.
        {pieces.some((piece) => piece.cuts.some((cut) => cut.mirrored)) &&
          ' Mirrored pieces are cut with the pattern face down.'}
      </p>
      {allCloths.map((cloth) => {
        const rows = pieces.flatMap((piece) =>
          piece.cuts.filter((cut) => cut.cloth === cloth).map((cut): Row => ({ piece, cut })),
        );
        return rows.length === 0 ? null : <CutList key={cloth} cloth={cloth} rows={rows} />;
      })}
    </>
  );
};

const CutList = ({ cloth, rows }: { readonly cloth: Cloth; readonly rows: readonly Row[] }) => {
  const halves = useStudio((s) => s.wish.paper.halves);
  const mirrored = rows.some(({ cut }) => cut.mirrored);
  return (
    <table className="list">
      <caption>{clothNames[cloth]}</caption>
      <thead>
        <tr>
          <th scope="col">Piece</th>
          <th scope="col">Cut</th>
          {mirrored && <th scope="col">Mirrored</th>}
          {halves && <th scope="col">On the fold</th>}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ piece, cut }) => (
          <PieceRow key={piece.id} piece={piece}>
            <td>{cut.count}</td>
            {mirrored && <td>{cut.mirrored ? `${cut.mirrored} of ${cut.count}` : ''}</td>}
            {halves && <td>{piece.foldable ? 'yes' : ''}</td>}
          </PieceRow>
        ))}
      </tbody>
    </table>
  );
};

/** A row that points at its piece on the table. */
const PieceRow = ({ piece, children }: { readonly piece: Piece; readonly children: React.ReactNode }) => {
  const chosen = useStudio((s) => s.chosen === piece.id);
  return (
    <tr onPointerEnter={() => light(piece.id)} onPointerLeave={() => light(null)}>
      <th scope="row">
        <button
          type="button"
          className="row"
          aria-pressed={chosen}
          onFocus={() => light(piece.id)}
          onBlur={() => light(null)}
          onClick={() => choose(chosen ? null : piece.id)}
        >
          {piece.name}
        </button>
      </th>
      {children}
    </tr>
  );
};
