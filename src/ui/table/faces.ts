/** A typeface of the page's style sheets, for where there is no style sheet. */
export interface Face {
  readonly family: string;
  readonly source: string;
  readonly weight: string;
  readonly style: string;
  readonly unicodeRange: string;
}

/** The faces that the page's style sheets name, with whole addresses. */
export const facesOf = (page: Document): Face[] =>
  [...page.styleSheets].flatMap((sheet) =>
    [...sheet.cssRules]
      .filter((rule) => rule instanceof CSSFontFaceRule)
      .map(({ style }) => ({
        family: style.getPropertyValue('font-family').replace(/^["']|["']$/g, ''),
        source: withWholeAddresses(style.getPropertyValue('src'), sheet.href ?? page.baseURI),
        weight: style.getPropertyValue('font-weight') || 'normal',
        style: style.getPropertyValue('font-style') || 'normal',
        unicodeRange: style.getPropertyValue('unicode-range') || 'U+0-10FFFF',
      })),
  );

const withWholeAddresses = (source: string, base: string): string =>
  source.replace(
    /url\(\s*["']?([^"')]+)["']?\s*\)/g,
    (_, address) => `url("${new URL(address, base).href}")`,
  );
