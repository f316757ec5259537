import { styleOf } from '../../caps/registry.ts';
import type { Spec } from '../../design/spec.ts';
import { meanGirth } from '../../head/girth.ts';
import { onShelf, removeFromShelf, takeToTable } from '../../state/shelf.ts';
import { type Shelved, savedName } from '../../state/shelved.ts';
import { useStudio } from '../../state/studio.ts';
import { formatLength } from '../../units.ts';
import { focusHeading } from '../focus.ts';
import { Figures } from '../Said.tsx';
import { FormSketch } from '../sketches/FormSketch.tsx';
import { useSketches, useSketchesOfTable } from '../sketches/use-sketches.ts';
import { saveCap } from './save-caps.ts';
import { useOpened } from './use-opened.ts';

/** One cap of the shelf, and what can be done with it. */
export const CapOnShelf = ({ cap }: { readonly cap: Shelved }) => {
  const opened = useOpened(cap);
  const name = nameOf(savedName(cap));
  return (
    <li className="shelved">
      {opened && <Sketch spec={opened.good} />}
      <div>
        <h3>{name}</h3>
        {opened && <About spec={opened.wish} />}
        <p className="actions">
          <button
            type="button"
            aria-label={`Take ${name} to the table`}
            onClick={({ currentTarget }) => {
              focusHeading(currentTarget);
              void takeToTable(cap);
            }}
          >
            Take to the table
          </button>
          <Save name={name} cap={() => cap} />
          <button
            type="button"
            aria-label={`Remove ${name} from the shelf`}
            onClick={({ currentTarget }) => {
              focusHeading(currentTarget);
              removeFromShelf(cap);
            }}
          >
            Remove
          </button>
        </p>
      </div>
    </li>
  );
};

/** The cap that is being worked on: kept as it is changed. */
export const CapOnTable = () => {
  const wish = useStudio((s) => s.wish);
  const [picture] = useSketchesOfTable();
  return (
    <li className="shelved" aria-current="true">
      <FormSketch picture={picture} />
      <div>
        <h3>{nameOf(wish.cap.name)}</h3>
        <About spec={wish} />
        <p className="help">On the table.</p>
        <p className="actions">
          <Save name={nameOf(wish.cap.name)} cap={onShelf} />
        </p>
      </div>
    </li>
  );
};

const Save = ({ name, cap }: { readonly name: string; readonly cap: () => Shelved }) => (
  <button type="button" aria-label={`Save ${name} as a file`} onClick={() => saveCap(cap())}>
    Save as a file
  </button>
);

const nameOf = (name: string): string => (name.trim() === '' ? 'A cap without a name' : name);

const Sketch = ({ spec }: { readonly spec: Spec }) => {
  const [picture] = useSketches(spec);
  return <FormSketch picture={picture} />;
};

const About = ({ spec: { head, cap } }: { readonly spec: Spec }) => {
  const unit = useStudio((s) => s.wish.unit);
  const girth = meanGirth(head.readings);
  const figures = [head.name.trim(), girth === null ? '' : formatLength(girth, unit)].filter(
    (part) => part !== '',
  );
  return (
    <p className="help">
      {styleOf(cap.style).name} · <Figures text={figures.join(', ')} />
    </p>
  );
};
