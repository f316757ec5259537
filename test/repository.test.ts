import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { headingsOf, pointersOf } from './house/readme.ts';
import { tracksIn } from './house/tracks.ts';

const root = join(import.meta.dirname, '..');
const read = (file: string): string => readFileSync(join(root, file), 'utf8');
const passing = read('.gitignore').split(/\/?\n/);

const ownFiles = (folder: string): readonly string[] =>
  readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (passing.includes(entry.name) || entry.name === '.git') return [];
    return entry.isDirectory() ? ownFiles(path) : [path];
  });

const isText = (file: string): boolean => !/\.(png|ttf|woff2?|ico|pdf)$/.test(file);
const npmsOwn = ['ci', 'install', 'start', 'test', 'run'];

describe.each(['README.md', 'DEVELOPERS.md'])('%s', (name) => {
  const page = read(name);
  const { files, headings, scripts } = pointersOf(page);

  it('points only at what is there', () => {
    expect(files.length).toBeGreaterThan(0);
    expect(files.filter((file) => !existsSync(join(root, file)))).toEqual([]);
    expect(headings.filter((heading) => !headingsOf(page).includes(heading))).toEqual([]);
  });

  it('names only commands that the package has', () => {
    const known = [...npmsOwn, ...Object.keys(JSON.parse(read('package.json')).scripts)];
    expect(scripts).toContain('test');
    expect(scripts.filter((script) => !known.includes(script))).toEqual([]);
  });
});

describe('the files of the project', () => {
  it('keep no trace of a machine or of where packages were fetched', () => {
    const files = ownFiles('.').filter(isText);
    expect(files).toContain('package-lock.json');
    expect(files).toContain('src/main.tsx');
    expect(files.flatMap((file) => tracksIn(read(file)).map((track) => `${file}: ${track}`))).toEqual([]);
  });

  it('lock every package to its checksum', () => {
    const { packages } = JSON.parse(read('package-lock.json')) as {
      packages: Record<string, { integrity?: string }>;
    };
    const fetched = Object.entries(packages).filter(([path]) => path !== '');
    expect(fetched.length).toBeGreaterThan(20);
    expect(fetched.filter(([, parcel]) => !parcel.integrity?.startsWith('sha512-'))).toEqual([]);
  });
});

describe('the check of the pages', () => {
  const page =
    '# How it is built\nSee [the map](src/no-map.ts#top), [above](#how-it-is-built), `test/none.ts`, npm run fly.';

  it('reads links, headings, paths set as code and commands', () => {
    expect(pointersOf(page)).toEqual({
      files: ['src/no-map.ts', 'test/none.ts'],
      headings: ['how-it-is-built'],
      scripts: ['fly'],
    });
    expect(headingsOf(page)).toEqual(['how-it-is-built']);
  });
});

describe('the check for traces', () => {
  const slash = '/';

  it.each([
    ['a path of the machine', `"${slash}tmp${slash}a.png"`],
    ['a home folder', `from ${slash}home${slash}me/file`],
    ['an address that packages came from', `https:${slash}${slash}${'registry'}.example.org${slash}x.tgz`],
    ['a locked address', '"resolved"' + ': "x"'],
  ])('finds %s', (_, text) => {
    expect(tracksIn(text)).toHaveLength(1);
  });

  it('lets paths inside the project be', () => {
    expect(tracksIn("import '../../tmp/a.ts'; 'src/work/x'; ./home/x")).toEqual([]);
  });
});
