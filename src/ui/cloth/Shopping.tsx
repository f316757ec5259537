import { useEffect, useState } from 'react';
import { lengthBought, toBuy } from '../../cloth/buying.ts';
import { capsInWords } from '../../cloth/cap-names.ts';
import {
  type ClothItem,
  type ClothNeed,
  type Needs,
  type ShoppingList,
  shoppingList,
} from '../../cloth/shopping.ts';
import { STRIPES } from '../../cloth/stripes.ts';
import { threadWords } from '../../cloth/thread.ts';
import { clothNames } from '../../drawing/cut-words.ts';
import { useStudio } from '../../state/studio.ts';
import { formatLength, type Unit } from '../../units.ts';
import { Figures } from '../Said.tsx';
import { type CapToCut, capsToCut } from './caps-to-cut.ts';
import { needsOf } from './needs.ts';
import { notionWords, shoppingText } from './shopping-text.ts';

/** Laying for the list waits for this rest, ms. */
const REST = 600;

interface Found {
  readonly caps: readonly CapToCut[];
  readonly needs: Needs;
}

/** What became of a list that was to be copied. */
interface Copy {
  readonly text: string;
  readonly done: boolean;
}

/** What to buy: every cloth at the widths that shops have, and all that is not cloth. */
export const Shopping = () => {
  const good = useStudio((s) => s.good);
  const shelf = useStudio((s) => s.shelf);
  const unit = useStudio((s) => s.wish.unit);
  const { here, besides } = useStudio((s) => s.lay);
  const [found, setFound] = useState<Found | 'failed' | null>(null);
  const [copy, setCopy] = useState<Copy | null>(null);
  useEffect(() => {
    const stop = new AbortController();
    const reckon = async (): Promise<void> => {
      const { caps } = await capsToCut({ good, shelf, lay: { here, besides } });
      setFound({ caps, needs: await needsOf(caps, good.cloths, unit, stop.signal) });
    };
    const fail = (): void => {
      if (!stop.signal.aborted) setFound('failed');
    };
    const timer = setTimeout(() => void reckon().catch(fail), REST);
    return () => {
      clearTimeout(timer);
      stop.abort();
    };
  }, [good, shelf, here, besides, unit]);
  if (found === null) return <p className="help">Reckoning what to buy…</p>;
  if (found === 'failed')
    return <p className="problem">What to buy could not be reckoned: please reload the page.</p>;
  const { caps, needs } = found;
  const list = shoppingList(caps, good.cloths, needs, unit);
  const text = shoppingText(list, caps, unit);
  const putOnClipboard = async (): Promise<void> => {
    const done = await navigator.clipboard.writeText(text).then(
      () => true,
      () => false,
    );
    setCopy({ text, done });
  };
  // Of another list nothing has been said yet.
  const copied = copy?.text === text ? copy.done : null;
  return (
    <section className="shopping" aria-label="Shopping list">
      <h3>Shopping list</h3>
      {capCount(caps) > 1 && <p className="help">For {capsInWords(caps)}.</p>}
      <ClothTable list={list} unit={unit} />
      <ul>
        {list.notions
          .map((notion) => notionWords(notion, unit))
          .map((text) => (
            <li key={text}>
              <Figures text={text} />
            </li>
          ))}
        <li>
          Thread: about <Figures text={threadWords(list.thread, unit)} />
        </li>
        {list.cost !== null && (
          <li>
            Cloth with a price: <b className="figures">{list.cost.toFixed(2)}</b>
          </li>
        )}
      </ul>
      <p className="help">
        A shop’s cloth shrinks and is cut askew: when in doubt, the next step up. {STRIPES}
      </p>
      <div className="actions">
        <button type="button" onClick={() => void putOnClipboard()}>
          {copied === true ? 'Copied' : 'Copy the list'}
        </button>
        <button type="button" onClick={() => window.print()}>
          Print the list
        </button>
      </div>
      <p className="help" role="status">
        {copied === false &&
          'This browser does not let the list be copied: print it, or mark it and copy it by hand.'}
      </p>
    </section>
  );
};

const capCount = (caps: readonly CapToCut[]): number => caps.reduce((sum, { count }) => sum + count, 0);

const widthWords = (mm: number, unit: Unit): string =>
  unit === 'cm' ? `${Math.round(mm / 10)} cm` : formatLength(mm, unit);

const ClothTable = ({ list, unit }: { readonly list: ShoppingList; readonly unit: Unit }) => (
  <div className="scrolls">
    <table>
      <thead>
        <tr>
          <th scope="col">Cloth</th>
          <th scope="col">Yours</th>
          {list.cloths[0]?.common.map(({ width }) => (
            <th scope="col" key={width}>
              <Figures text={widthWords(width, unit)} />
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {list.cloths.map((item) => (
          <Row key={item.cloth} item={item} widths={list.cloths[0]!.common.length} unit={unit} />
        ))}
      </tbody>
    </table>
  </div>
);

interface RowProps {
  readonly item: ClothItem;
  /** How many common widths the table has. */
  readonly widths: number;
  readonly unit: Unit;
}

const Row = ({ item, widths, unit }: RowProps) => (
  <tr>
    <th scope="row">
      {clothNames[item.cloth]}
      {item.kind !== null && <span className="help"> {item.kind}</span>}
    </th>
    {[item.own, ...item.common].map((need, i) => (
      <td key={i === 0 ? 'own' : need.width}>
        <Figures text={needWords(need, unit)} />
      </td>
    ))}
    {item.common.length < widths && (
      <td colSpan={widths - item.common.length} className="help">
        <Figures text={`at ${widthWords(item.own.width, unit)} wide`} />
      </td>
    )}
  </tr>
);

const needWords = ({ length }: ClothNeed, unit: Unit): string =>
  length === null ? 'too narrow' : lengthBought(toBuy(length, unit), unit);
