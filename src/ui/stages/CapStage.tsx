import { flatTopParameters } from '../../caps/flat-top/parameters.ts';
import type { ParameterGroup, ParameterTable } from '../../caps/parameter.ts';
import { Wished } from '../controls/Wished.tsx';
import { InsertFit } from './InsertFit.tsx';

const table: ParameterTable = flatTopParameters;
const namesIn = (group: ParameterGroup): readonly string[] =>
  Object.keys(table).filter((name) => table[name]?.group === group);

/** The groups under the first sliders, and whether they lie open at first. */
const folds: readonly (readonly [ParameterGroup, string, boolean])[] = [
  ['band', 'Band', true],
  ['visor', 'Visor', true],
  ['strap', 'Strap', false],
  ['lining', 'Lining', false],
  ['seams', 'Seam allowances', false],
];

/** What the cap is to be like: ease first, then how full the crown is. */
export const CapStage = () => (
  <>
    {[...namesIn('fit'), ...namesIn('crown')].map((name) => (
      <Wished key={name} name={name} />
    ))}
    {folds.map(([group, title, open]) => (
      <details key={group} open={open}>
        <summary>{title}</summary>
        {namesIn(group).map((name) => (
          <Wished key={name} name={name} />
        ))}
        {group === 'visor' && <InsertFit />}
      </details>
    ))}
  </>
);
