/** What a page of the project's own words points at, without the pages of elsewhere. */
export interface Pointers {
  /** Files and folders, from links and from paths set as code. */
  readonly files: readonly string[];
  /** Headings of the same page, as its links name them. */
  readonly headings: readonly string[];
  /** Commands of the package that it tells the reader to run. */
  readonly scripts: readonly string[];
}

export const pointersOf = (page: string): Pointers => {
  const links = [...page.matchAll(/\]\(([^)\s]+)[^)]*\)/g)].map((found) => found[1] ?? '');
  const near = links.filter((link) => !/^[a-z]+:/.test(link));
  const coded = [...page.matchAll(/`((?:src|test|e2e|public|\.ci)\/[^`\s]*)`/g)].map(
    (found) => found[1] ?? '',
  );
  return {
    files: [
      ...near.filter((link) => !link.startsWith('#')).map((link) => link.replace(/#.*$/, '')),
      ...coded,
    ],
    headings: near.filter((link) => link.startsWith('#')).map((link) => link.slice(1)),
    scripts: [...page.matchAll(/npm (?:run )?([a-z0-9:]+)/g)].map((found) => found[1] ?? ''),
  };
};

/** The headings of a page, as links name them: small letters, hyphens for spaces. */
export const headingsOf = (page: string): readonly string[] =>
  [...page.matchAll(/^#+ (.+)$/gm)].map((found) =>
    (found[1] ?? '')
      .toLowerCase()
      .replace(/[^\p{L}\p{N} -]/gu, '')
      .replaceAll(' ', '-'),
  );
