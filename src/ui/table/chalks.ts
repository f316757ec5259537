/** The table's colours, as the style sheet has them now. */
export interface Chalks {
  readonly ink: string;
  readonly paper: string;
  readonly dot: string;
  readonly chalk: string;
  readonly madder: string;
  readonly font: string;
}

/** What stands in where the page has no style sheet of its own. */
const plain = { ink: '#1e2a33', paper: '#f7f4ec', dot: '#d5cdbd', chalk: '#1d5a97', madder: '#a1282d' };

export const readChalks = (element: Element): Chalks => {
  const style = getComputedStyle(element);
  const read = (name: string, otherwise: string): string => style.getPropertyValue(name).trim() || otherwise;
  return {
    ink: read('--ink', plain.ink),
    paper: read('--paper', plain.paper),
    dot: read('--grid', plain.dot),
    chalk: read('--chalk', plain.chalk),
    madder: read('--madder', plain.madder),
    font: style.fontFamily,
  };
};

/** Calls back whenever the colours or the typeface may have changed. Returns how to stop. */
export const watchChalks = (changed: () => void): (() => void) => {
  const dark = matchMedia('(prefers-color-scheme: dark)');
  const attributes = new MutationObserver(changed);
  attributes.observe(document.documentElement, { attributes: true });
  dark.addEventListener('change', changed);
  document.fonts.addEventListener('loadingdone', changed);
  return () => {
    attributes.disconnect();
    dark.removeEventListener('change', changed);
    document.fonts.removeEventListener('loadingdone', changed);
  };
};
