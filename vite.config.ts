import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { type Plugin, parseSync, type Rolldown } from 'vite';
import { defineConfig } from 'vitest/config';

/** What jsPDF would load to draw web pages and SVG, which no pattern needs. */
const absent = fileURLToPath(new URL('./src/print/pdf/absent.ts', import.meta.url));

/** Nothing from elsewhere, nothing to elsewhere, no code but the page's own. */
const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' data: blob:",
  "worker-src 'self'",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** The built page carries the policy; the page in development could not reload itself under it. */
const securityPolicy: Plugin = {
  name: 'security-policy',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: policy },
      injectTo: 'head-prepend',
    },
  ],
};

/** Kinds of things that Paper knows and the table has none of: nearly half of Paper's size, with the skills below. */
const unusedKinds = [
  'Shape Raster SymbolItem SymbolDefinition Gradient GradientStop Line Tween Http SvgElement SvgStyles',
  'Curve CurveLocation CollisionDetection HitResult PathFlattener PathFitter',
  'Key KeyEvent MouseEvent ToolEvent Tool CanvasView',
].flatMap((names) => names.split(' '));

/** What Paper can do and the table never asks for, each by a word that only it says: the table listens to hands itself. */
const unusedSkills = [
  'unite',
  'quadraticCurveTo',
  'RegularPolygon',
  'exportSVG',
  'importSVG',
  '_handleKeyEvent',
];

/** What the kinds that are left could do besides, each by its name. */
const unusedMethods =
  'toShape setPathData _hitTest _getItems matches getHandleBounds rasterize splitAt join deserialize'.split(
    ' ',
  );

/** A stretch of a program, from its syntax tree. */
interface Stretch {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly declarations?: readonly { readonly id: { readonly name?: string } }[];
  readonly key?: { readonly name?: string };
  readonly value?: { readonly type?: string };
}

/** One stretch of Paper that is left out, and what stands in its place. */
interface Unused {
  readonly what: string;
  readonly isIt: (stretch: Stretch, program: string) => boolean;
  readonly instead: string;
}

const kind = (name: string): Unused => ({
  what: name,
  isIt: ({ type, declarations }) => type === 'VariableDeclaration' && declarations?.[0]?.id.name === name,
  instead: `function ${name}() {}`,
});

const skill = (word: string): Unused => ({
  what: word,
  isIt: ({ type, start, end }, program) =>
    type === 'NewExpression' && program.slice(start, end).includes(`${word}: function`),
  instead: '{}',
});

const method = (name: string): Unused => ({
  what: name,
  isIt: ({ type, key, value }) =>
    type === 'Property' && key?.name === name && value?.type === 'FunctionExpression',
  instead: `${name}: function() {}`,
});

/** Leaves out of Paper what is not used: it is one great function, which no bundler prunes. Fails where Paper has changed. */
const leanPaper: Plugin = {
  name: 'lean-paper',
  apply: 'build',
  transform: {
    filter: { id: /paper-core/ },
    handler(code) {
      const all = stretchesOf(parseSync('paper.js', code).program);
      const find = (unused: readonly Unused[], outside: readonly Stretch[]) =>
        unused.map(({ what, isIt, instead }) => {
          const [found, ...more] = all.filter(
            (one) =>
              isIt(one, code) && !outside.some(({ start, end }) => start <= one.start && one.end <= end),
          );
          return found && more.length === 0
            ? { ...found, instead }
            : this.error(`Paper has no single ${what} to leave out`);
        });
      const whole = find([...unusedKinds.map(kind), ...unusedSkills.map(skill)], []);
      // From the end on, so that the places before it stay as they are.
      return [...whole, ...find(unusedMethods.map(method), whole)]
        .sort((a, b) => b.start - a.start)
        .reduce((left, { start, end, instead }) => left.slice(0, start) + instead + left.slice(end), code);
    },
  },
};

const stretchesOf = (tree: unknown): Stretch[] => {
  const found: Stretch[] = [];
  const look = (node: unknown): void => {
    if (typeof node !== 'object' || node === null) return;
    if ('type' in node) found.push(node as Stretch);
    Object.values(node).forEach(look);
  };
  look(tree);
  return found;
};

/** The mark of a worker that is built with the page and shares its chunks, rather than as a bundle of its own. */
const BESIDE = /\?beside$/;

/** A chunk and all that it imports, now or later. */
const reached = (from: Rolldown.OutputChunk, bundle: Rolldown.OutputBundle): Rolldown.OutputChunk[] => {
  const found = new Set([from]);
  for (const { imports, dynamicImports } of found) {
    for (const name of [...imports, ...dynamicImports]) {
      const next = bundle[name];
      if (next?.type === 'chunk') found.add(next);
    }
  }
  return [...found];
};

/** What does something as soon as it is there. */
const STARTS = /(\/src\/main\.tsx|\.worker\.ts)$/;

let isBuilt = false;
const workersBeside: Plugin = {
  name: 'workers-beside',
  enforce: 'pre',
  configResolved: ({ command }) => {
    isBuilt = command === 'build';
  },
  resolveId: {
    filter: { id: BESIDE },
    async handler(id, importer) {
      const file = await this.resolve(id.replace(BESIDE, ''), importer);
      return file && `${file.id}?beside`;
    },
  },
  load: {
    filter: { id: BESIDE },
    handler(id) {
      const file = id.replace(BESIDE, '');
      return isBuilt
        ? `export default import.meta.ROLLUP_FILE_URL_${this.emitFile({ type: 'chunk', id: file })};`
        : `export default ${JSON.stringify(file.replace(import.meta.dirname, ''))};`;
    },
  },
  /** A worker whose chunks held the start of the page, or another worker, would start that too. */
  generateBundle(_, bundle) {
    for (const file of Object.values(bundle)) {
      if (file.type !== 'chunk' || !file.facadeModuleId?.endsWith('.worker.ts')) continue;
      const modules = reached(file, bundle).flatMap(({ moduleIds }) => moduleIds);
      const other = modules.find((id) => STARTS.test(id) && id !== file.facadeModuleId);
      if (other !== undefined) this.error(`${file.fileName} shares a chunk with ${other}`);
    }
  },
};

export default defineConfig({
  base: './',
  plugins: [react(), securityPolicy, leanPaper, workersBeside],
  resolve: { alias: { html2canvas: absent, canvg: absent, dompurify: absent } },
  // Only a worker imports it: in development it would be found too late.
  optimizeDeps: { include: ['paper/dist/paper-core'] },
  build: {
    target: 'es2022',
    // What is fetched later may be fetched by a worker too, where there is no page to name it in ahead.
    modulePreload: false,
    // What the first visit needs comes in three pieces, since many small ones pack worse: the studio, its painter,
    // and the rules of caps, which both ask; there stands what files are written by too, which need no painter.
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            {
              name: 'rules',
              test: /src\/(ui\/table\/painting|geometry\/walk|design\/change-style)\.ts$/,
              priority: 3,
            },
            { name: 'studio', test: /src\/main\.tsx$/, priority: 2 },
            { name: 'painter', test: /src\/ui\/table\/painter\.ts$/, priority: 1 },
          ],
        },
      },
    },
  },
  worker: { format: 'es' },
  test: {
    include: ['test/**/*.test.ts'],
    // A worker for each core: by itself the runner leaves one free.
    maxWorkers: '100%',
    // What is pure leaves nothing behind: a worker reads and warms it up once for all files. The store is opened anew each time.
    isolate: false,
    // A machine that has other work to do is no failure.
    testTimeout: 60_000,
    benchmark: {
      include: ['test/**/*.bench.ts'],
      includeSamples: true,
      reporters: ['./e2e/bench/unit-times.ts'],
    },
  },
});
