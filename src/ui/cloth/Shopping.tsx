import { useEffect, useState } from 'react';
import { lengthBought, toBuy } from '../../cloth/buying.ts';
import {
  type ClothItem,
  type ClothNeed,
  type Needs,
  type ShoppingList,
  shoppingList,
} from '../../cloth/shopping.ts';
import { threadWords } from '../../cloth/thread.ts';
import { clothNames } from '../../drawing/cut-words.ts';
import { derived } from '../../state/derived.ts';
import { useStudio } from '../../state/studio.ts';
import { formatLength, type Unit } from '../../units.ts';
import { say } from '../../words.ts';
import { Figures, Said } from '../Said.tsx';
import { needsOf } from './needs.ts';
import { shoppingText } from './shopping-text.ts';

/** Laying for the list waits for this rest, ms. */
const REST = 600;

/** What to buy: every cloth at the widths that shops have, and all that is not cloth. */
export const Shopping = () => {
  const draft = useStudio((s) => derived(s.good).draft);
  const unit = useStudio((s) => s.wish.unit);
  const name = useStudio((s) => s.good.cap.name);
  const [needs, setNeeds] = useState<Needs | null>(null);
  const [copied, setCopied] = useState(false);
  useEffect(() => {
    if (draft === null) return;
    const stop = new AbortController();
    const timer = setTimeout(() => {
      // What to buy is told for one cap.
      const caps = [{ name: draft.spec.cap.name, cutting: draft.cutting, count: 1 }];
      needsOf(caps, draft.spec.cloths, unit, stop.signal).then(setNeeds, () => {});
    }, REST);
    return () => {
      clearTimeout(timer);
      stop.abort();
    };
  }, [draft, unit]);
  if (draft === null || needs === null) return <p className="help">Reckoning what to buy…</p>;
  const list = shoppingList(draft.cutting, draft.seams, draft.spec.cloths, needs, unit);
  const copy = async (): Promise<void> => {
    await navigator.clipboard.writeText(shoppingText(list, name, unit));
    setCopied(true);
  };
  return (
    <section className="shopping" aria-label="Shopping list">
      <h3>Shopping list</h3>
      <ClothTable list={list} unit={unit} />
      <ul>
        {list.notions.map((notion) => (
          <li key={notion.name + say(notion.size, unit)}>
            {notion.name}: <Said words={notion.size} />
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
      <p className="help">A shop’s cloth shrinks and is cut askew: when in doubt, the next step up.</p>
      <div className="actions">
        <button type="button" onClick={() => void copy()}>
          {copied ? 'Copied' : 'Copy the list'}
        </button>
        <button type="button" onClick={() => window.print()}>
          Print the list
        </button>
      </div>
    </section>
  );
};

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
          <Row key={item.cloth} item={item} unit={unit} />
        ))}
      </tbody>
    </table>
  </div>
);

const Row = ({ item, unit }: { readonly item: ClothItem; readonly unit: Unit }) => (
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
  </tr>
);

const needWords = ({ length }: ClothNeed, unit: Unit): string =>
  length === null ? 'too narrow' : lengthBought(toBuy(length, unit), unit);
