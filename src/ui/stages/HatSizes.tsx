import { meanGirth } from '../../head/girth.ts';
import { type HatSystem, hatSize, hatSizes, SIZE_IS_AN_ESTIMATE } from '../../head/hat-size.ts';
import { putGirth } from '../../state/heads.ts';
import { useStudio } from '../../state/studio.ts';
import { Typeset } from '../controls/Typeset.tsx';
import { Said } from '../Said.tsx';

const systems: readonly (readonly [HatSystem, string])[] = [
  ['eu', 'EU'],
  ['uk', 'UK'],
  ['us', 'US'],
];

/** The hat size of the girth, and the girth of a hat size: choosing one fills in the other. */
export const HatSizes = () => (
  <fieldset className="control sizes">
    <legend>Hat size</legend>
    <div className="options">
      {systems.map(([system, name]) => (
        <Size key={system} system={system} name={name} />
      ))}
    </div>
    <p className="help">
      <Said words={SIZE_IS_AN_ESTIMATE} />
    </p>
  </fieldset>
);

const Size = ({ system, name }: { readonly system: HatSystem; readonly name: string }) => {
  const girth = useStudio((s) => meanGirth(s.wish.head.readings));
  const size = girth === null ? null : hatSize(girth, system);
  const sizes = hatSizes(system);
  return (
    <label>
      {name}
      <Typeset text={size?.label ?? ''}>
        <select
          className="figures"
          aria-label={`Hat size, ${name}`}
          value={size?.label ?? ''}
          onChange={(event) => {
            const chosen = sizes.find(({ label }) => label === event.target.value);
            if (chosen) putGirth(chosen.girth);
          }}
        >
          {size === null && <option value="">–</option>}
          {sizes.map(({ label }) => (
            <option key={label} value={label}>
              {label}
            </option>
          ))}
        </select>
      </Typeset>
    </label>
  );
};
