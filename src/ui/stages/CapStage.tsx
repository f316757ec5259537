import { useEffect, useRef } from 'react';
import { applies, type ParameterGroup, type ParameterTable } from '../../caps/parameter.ts';
import { styleOf } from '../../caps/registry.ts';
import type { FieldId } from '../../state/field.ts';
import { useStudio } from '../../state/studio.ts';
import { useInTheWay } from '../../state/use-problems.ts';
import { Wished } from '../controls/Wished.tsx';
import { InsertFit } from './InsertFit.tsx';
import { StylePick } from './StylePick.tsx';

const namesIn = (table: ParameterTable, group: ParameterGroup): readonly string[] =>
  Object.keys(table).filter((name) => table[name]?.group === group);

/** The groups under the first sliders, and whether they lie open at first. */
const folds: readonly (readonly [ParameterGroup, string, boolean])[] = [
  ['band', 'Band', true],
  ['visor', 'Visor', true],
  ['brim', 'Brim', true],
  ['back', 'Back', true],
  ['strap', 'Strap', false],
  ['lining', 'Lining', false],
  ['seams', 'Seam allowances', false],
];

/** What the cap is to be like: ease first, then how full the crown is. */
export const CapStage = () => {
  const table = useStudio((s) => styleOf(s.wish.cap.style).parameters);
  return (
    <>
      <StylePick />
      {[...namesIn(table, 'fit'), ...namesIn(table, 'crown')].map((name) => (
        <Wished key={name} name={name} />
      ))}
      {folds.map(([group, title, open]) => {
        const names = namesIn(table, group);
        return names.length === 0 ? null : (
          <Fold key={group} group={group} names={names} title={title} openAtFirst={open} />
        );
      })}
    </>
  );
};

interface FoldProps {
  readonly group: ParameterGroup;
  readonly names: readonly string[];
  readonly title: string;
  readonly openAtFirst: boolean;
}

/** A group that can be folded away, while any of its rows counts. It opens by itself when something in it stands in the way. */
const Fold = ({ group, names, title, openAtFirst }: FoldProps) => {
  const fold = useRef<HTMLDetailsElement>(null);
  const inTheWay = useInTheWay(names.map((name): FieldId => `cap.${name}`));
  const counts = useStudio(({ wish: { cap } }) =>
    names.some((name) => applies(styleOf(cap.style).parameters, name, cap.values)),
  );
  useEffect(() => {
    if (inTheWay && fold.current) fold.current.open = true;
  }, [inTheWay]);
  return !counts && !inTheWay ? null : (
    <details ref={fold} open={openAtFirst}>
      <summary>{title}</summary>
      {names.map((name) => (
        <Wished key={name} name={name} />
      ))}
      {group === 'visor' && <InsertFit />}
    </details>
  );
};
