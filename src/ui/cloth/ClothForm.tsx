import { useId } from 'react';
import { clothKinds, kindOf } from '../../cloth/kinds.ts';
import { shrinksAlike } from '../../cloth/shrinkage.ts';
import type { Cloth } from '../../pattern/piece.ts';
import { putClothKind } from '../../state/cloth-actions.ts';
import { useStudio } from '../../state/studio.ts';
import { Measure } from '../controls/Measure.tsx';
import { lengthNotation, ratioNotation } from '../controls/notation.ts';
import { Switch } from '../controls/Switch.tsx';
import { priceNotation, thicknessNotation } from '../controls/stage-notations.ts';

/** What is known of one cloth. */
export const ClothForm = ({ cloth }: { readonly cloth: Cloth }) => {
  const nap = useStudio((s) => s.wish.cloths[cloth].nap);
  const alike = useStudio((s) => shrinksAlike(s.wish.cloths[cloth]));
  const unit = useStudio((s) => s.wish.unit);
  const flat = cloth === 'stiffener';
  return (
    <>
      <Kind cloth={cloth} />
      <Measure
        field={`cloth.${cloth}.thickness`}
        label="Thickness"
        notation={thicknessNotation}
        help={THICKNESS_HELP[cloth]}
      />
      <Measure
        field={`cloth.${cloth}.width`}
        label="Usable width"
        notation={lengthNotation}
        help="Between the selvedges."
      />
      {!flat && (
        <>
          <Switch field={`cloth.${cloth}.nap`} parameter={NAP} />
          {alike ? (
            <>
              {!nap && <Switch field={`cloth.${cloth}.cross`} parameter={CROSS} />}
              <Switch field={`cloth.${cloth}.bias`} parameter={BIAS} />
            </>
          ) : (
            <p className="help">{ALONG_THE_GRAIN}</p>
          )}
          <Switch field={`cloth.${cloth}.washed`} parameter={WASHED} />
          <Measure
            field={`cloth.${cloth}.shrinkLength`}
            label="Shrinks in length"
            notation={ratioNotation}
            help="Along the selvedge. Measure a marked sample before and after it is soaked or steamed."
          />
          <Measure field={`cloth.${cloth}.shrinkWidth`} label="Shrinks in width" notation={ratioNotation} />
        </>
      )}
      <Measure
        field={`cloth.${cloth}.price`}
        label={unit === 'cm' ? 'Price a metre' : 'Price a yard'}
        notation={priceNotation}
        empty="clears"
      />
    </>
  );
};

const LAYERS = 'Measure ten layers lying on each other and take a tenth.';
const THICKNESS_HELP: Readonly<Record<Cloth, string>> = {
  outer: `${LAYERS} Thick cloth takes girth: the shell is drafted longer by it. Nought leaves it out.`,
  lining: LAYERS,
  interlining: LAYERS,
  stiffener: 'Plastic or card for the visor.',
};

const NAP = {
  label: 'Nap or one-way print',
  help: 'Corduroy, velvet, brushed cloth: all pieces lie the same way up.',
};
const CROSS = {
  label: 'Across allowed',
  help: 'Pieces may lie across the cloth where that saves some: usual for lining and interlining.',
};
const BIAS = { label: 'Bias allowed', help: 'Pieces may be turned by 45° where that saves cloth.' };
const ALONG_THE_GRAIN =
  'All pieces lie along the grain: this cloth shrinks more one way than the other. Washed before cutting, they may be turned.';
const WASHED = {
  label: 'Washed before cutting',
  help: 'It is cut as drawn, and bought longer by what the wash takes.',
};

/** The kind of cloth: fills in what is typical of it, to be measured on the cloth itself. */
const Kind = ({ cloth }: { readonly cloth: Cloth }) => {
  const id = useId();
  const kind = useStudio((s) => s.wish.cloths[cloth].kind);
  const known = kindOf({ kind });
  return (
    <div className="control">
      <label htmlFor={id}>Kind</label>
      <select
        id={id}
        value={known?.id ?? 'other'}
        onChange={(event) => putClothKind(cloth, event.target.value)}
      >
        <option value="other">Not from the list</option>
        {clothKinds
          .filter(({ uses }) => uses.includes(cloth))
          .map(({ id: value, name }) => (
            <option key={value} value={value}>
              {name}
            </option>
          ))}
      </select>
      {known && <p className="help">Typical figures, to be measured on your own cloth.</p>}
    </div>
  );
};
