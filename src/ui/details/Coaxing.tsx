import { useMemo } from 'react';
import { coaxingOf, type Coaxing as PieceCoaxing } from '../../caps/coaxing.ts';
import { styleOf } from '../../caps/registry.ts';
import type { Draft } from '../../design/draft.ts';
import { formatRatio } from '../../units.ts';

const efforts: Readonly<Record<PieceCoaxing['effort'], string>> = {
  none: 'It takes its shape by itself once its seams are sewn.',
  fingers: 'Ease it over the fingers while it is sewn and pressed.',
  steam: 'Steam it over a ham or a rolled towel once it is sewn.',
};

/** How hard the cloth of a piece must be coaxed into its shape, and where; nothing for what does not stand in space. */
export const Coaxing = ({ draft, piece }: { readonly draft: Draft; readonly piece: string }) => {
  const { spec, values, head } = draft;
  const style = styleOf(spec.cap.style);
  const all = useMemo(() => coaxingOf(style.form(values, head)), [style, values, head]);
  const found = all.find((one) => one.piece === piece);
  if (!found) return null;
  const { effort, surplus } = found;
  if (effort === 'none') return <p className="help">{efforts.none}</p>;
  return (
    <p className="help">
      <b>To be coaxed.</b> Flat it is {formatRatio(surplus)} larger than on the head. {efforts[effort]}
      {style.coaxing !== undefined && ` ${style.coaxing}`}
    </p>
  );
};
