import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build, parseSync, type Rolldown } from 'vite';
import { expect, test } from '../studio.ts';
import { note } from './figures.ts';

const root = join(import.meta.dirname, '../..');
const dist = join(root, 'dist');
const KIB = 1024;
const MOST = 1.3;

test('the JavaScript that the page loads at first', async ({ page }) => {
  test.setTimeout(120_000);
  await page.addInitScript(() => {
    window.askedFor = () =>
      performance.getEntriesByType('resource').map(({ name }) => new URL(name).pathname.slice(1));
    new MutationObserver((_, watch) => {
      if (document.querySelector('[data-outline]') === null) return;
      window.firstAsked = window.askedFor();
      watch.disconnect();
    }).observe(document, { subtree: true, childList: true, attributeFilter: ['data-outline'] });
  });
  await page.goto('./');
  await page.waitForFunction(() => window.firstAsked !== undefined);
  await page.waitForLoadState('networkidle');
  const first = scriptsIn(await page.evaluate(() => window.firstAsked ?? []));
  const asked = await page.evaluate(() => window.askedFor());

  const bare = zippedSize(await bareLibraries());
  const size = (subject: string, files: readonly string[], wanted?: number): void => {
    const bytes = zippedSize(files.map((file) => readFileSync(join(dist, file), 'utf8')));
    const ratio = bytes / bare;
    note({
      subject,
      median: bytes / KIB,
      unit: 'KiB',
      against: { name: 'react-dom + paper-core + zustand alone', ratio },
      ...(wanted === undefined ? {} : { wanted: `at most ${wanted}×`, met: ratio <= wanted }),
    });
  };
  const files = loadedAtStart();
  expect(first).toEqual(expect.arrayContaining(files));
  size('JavaScript that the page names itself, gzip', files);
  size(
    'JavaScript with the table that it shows at once, gzip',
    // And whatever else had come by the time that the pieces lay there.
    [...new Set([...withImports([...files, ...filesSaying(PAPER)]), ...first])],
    MOST,
  );
  size('JavaScript of a first visit with all it fetches ahead, gzip', scriptsIn(asked));

  const late = filesSaying(PDF);
  expect(late.length).toBeGreaterThan(0);
  expect(asked.filter((file) => late.includes(file))).toEqual([]);
  expect(asked.filter((file) => /\.(ttf|otf)$/.test(file))).toEqual([]);
});

declare global {
  interface Window {
    /** What the page has asked for so far, and what it had when the table was first painted. */
    askedFor: () => string[];
    firstAsked?: string[];
  }
}

const scriptsIn = (files: readonly string[]): string[] => [
  ...new Set(files.filter((file) => file.endsWith('.js'))),
];

const zippedSize = (texts: readonly string[]): number =>
  texts.reduce((sum, text) => sum + gzipSync(text, { level: 9 }).length, 0);

/** The scripts and preloaded modules of the built page, and what they import in turn before they run. */
const loadedAtStart = (): string[] => {
  const page = readFileSync(join(dist, 'index.html'), 'utf8');
  const tags = page.match(/<(script|link)\b[^>]*>/g) ?? [];
  const first = tags.flatMap((tag) => {
    const loads = tag.startsWith('<script') || /rel="?modulepreload/.test(tag);
    const file = /(?:src|href)="?\.?\/?([^"\s>]+)/.exec(tag)?.[1];
    return loads && file !== undefined ? [file] : [];
  });
  return withImports(first);
};

/** Modules and what they import in turn before they run. */
const withImports = (first: readonly string[]): string[] => {
  const found = new Set<string>();
  const follow = (file: string): void => {
    if (found.has(file)) return;
    found.add(file);
    const { module } = parseSync(file, readFileSync(join(dist, file), 'utf8'));
    const names = [
      ...module.staticImports.map(({ moduleRequest }) => moduleRequest.value),
      ...module.staticExports.flatMap(({ entries }) => entries.map((e) => e.moduleRequest?.value)),
    ];
    for (const name of names)
      if (name !== undefined) follow(new URL(name, `file:///${file}`).pathname.slice(1));
  };
  first.forEach(follow);
  return [...found];
};

const NAME = 'virtual:bare-libraries';

/** A page that has the three libraries and does nothing with them, built as ours is. */
const bareLibraries = async (): Promise<string[]> => {
  const text = `import { createRoot } from 'react-dom/client';
    import paper from 'paper/dist/paper-core';
    import { create } from 'zustand';
    globalThis.all = [createRoot, paper, create];`;
  const bare = {
    name: 'bare-libraries',
    resolveId: (id: string) => (id === NAME ? `\0${NAME}` : undefined),
    load: (id: string) => (id === `\0${NAME}` ? text : undefined),
  };
  const built = await build({
    root,
    configFile: false,
    logLevel: 'silent',
    plugins: [bare],
    build: {
      write: false,
      target: 'es2022',
      modulePreload: { polyfill: false },
      rolldownOptions: { input: NAME },
    },
  });
  return chunksOf(built).map(({ code }) => code);
};

/** What only the library that writes PDF says, and what only the one that paints the table. */
const PDF = 'jsPDF PubSub Error';
const PAPER = 'PaperScope';

const filesSaying = (words: string): string[] =>
  readdirSync(join(dist, 'assets'))
    .map((name) => `assets/${name}`)
    .filter((file) => file.endsWith('.js') && readFileSync(join(dist, file), 'utf8').includes(words));

type Built = Awaited<ReturnType<typeof build>>;

const chunksOf = (built: Built): Rolldown.OutputChunk[] =>
  [built]
    .flat()
    .flatMap((b) => ('output' in b ? b.output : []))
    .filter((part) => part.type === 'chunk');
