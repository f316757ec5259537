import { type ReactNode, type RefObject, useEffect, useRef } from 'react';
import type { Draft } from '../../design/draft.ts';
import { open } from '../../state/actions.ts';
import { drafted } from '../../state/derived.ts';
import type { Detail } from '../../state/state.ts';
import { useStudio } from '../../state/studio.ts';
import { Fetched, part } from '../Fetched.tsx';
import { useShownAtRest } from '../use-shown-at-rest.ts';

const reckonings = part(() => import('./Reckonings.tsx').then((m) => m.Reckonings));
const shelf = part(() => import('../shelf/Shelf.tsx').then((m) => m.Shelf));

/** Opens a reckoning or the shelf once it is there to be shown, or closes what is open. */
export const openDetail = async (detail: Detail | null): Promise<void> => {
  if (detail !== null) await (detail === 'shelf' ? shelf : reckonings).fetch();
  open(detail);
};

const titles = {
  inside: 'Finished inside girth',
  seams: 'Seam check',
  piece: 'The arithmetic',
} as const;

type Reckoned = Exclude<Detail, 'shelf'>;

/** Null for a fact that this cap does not have. */
const titleOf = (detail: Reckoned, { facts }: Draft): string | null =>
  detail in titles
    ? titles[detail as keyof typeof titles]
    : (facts.find(({ id }) => detail === `fact.${id}`)?.title ?? null);

/** How a number of the tally comes about, or the shelf, beside the table. Escape closes it. */
export const DetailPanel = () => {
  const detail = useStudio((s) => s.detail);
  const heading = useRef<HTMLHeadingElement>(null);
  // The focus goes to what was opened, and back to where it came from when that is closed.
  useEffect(() => {
    if (detail === null) return;
    const opener = document.activeElement;
    heading.current?.focus();
    return () => {
      const left = document.activeElement === document.body || document.activeElement === null;
      if (left && opener instanceof HTMLElement) opener.focus();
    };
  }, [detail]);
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.key === 'Escape' && !event.defaultPrevented) open(null);
    };
    if (detail === null) return;
    document.addEventListener('keydown', onKeyDown);
    return () => document.removeEventListener('keydown', onKeyDown);
  }, [detail]);
  if (detail === null) return <Closed />;
  return detail === 'shelf' ? (
    <Opened title="The shelf" heading={heading}>
      <Fetched part={shelf} with={{}} />
    </Opened>
  ) : (
    <Reckoning detail={detail} heading={heading} />
  );
};

const Closed = () => <aside id="detail" hidden />;

interface OpenedProps {
  readonly title: string;
  readonly heading: RefObject<HTMLHeadingElement | null>;
  readonly children: ReactNode;
}

const Opened = ({ title, heading, children }: OpenedProps) => (
  <aside id="detail" className="detail" aria-labelledby="detail-title">
    <div className="detail-head">
      <h2 id="detail-title" ref={heading} tabIndex={-1}>
        {title}
      </h2>
      <button type="button" onClick={() => open(null)}>
        Close
      </button>
    </div>
    {children}
  </aside>
);

interface ReckoningProps extends Pick<OpenedProps, 'heading'> {
  readonly detail: Reckoned;
}

/** The page drafts the cap itself for a reckoning: not while a slider moves, but as soon as it pauses, ms. */
const REST = 120;

const Reckoning = ({ detail, heading }: ReckoningProps) => {
  const draft = drafted(useShownAtRest(REST));
  const title = draft && titleOf(detail, draft);
  if (draft === null || title === null) return <Closed />;
  return (
    <Opened title={title} heading={heading}>
      <Fetched part={reckonings} with={{ detail, draft }} />
    </Opened>
  );
};
