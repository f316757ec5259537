import { posix } from 'node:path';
import { importsOf } from './imports.ts';
import { HOMES, LAYERS, LEAVES, ROOTS } from './rules.ts';

/** The files of src by path ('src/geometry/point.ts'), each with its text. */
export type Sources = ReadonlyMap<string, string>;

/** Every import that breaks the order of the house, one sentence each; none when the house is in order. */
export const brokenRules = (sources: Sources): readonly string[] => {
  const imports = new Map<string, readonly string[]>();
  for (const [file, text] of sources) {
    if (isCode(file)) imports.set(file, importsOf(file, text).map(withoutQuery));
  }
  const known = new Set(sources.keys());
  return [
    ...[...sources.keys()].flatMap(misplaced),
    ...[...imports].flatMap(([file, names]) => names.flatMap((name) => wrongImport(file, name, known))),
    ...cycles(imports),
  ];
};

const isCode = (file: string): boolean => /\.tsx?$/.test(file);
const withoutQuery = (name: string): string => name.replace(/\?.*$/, '');

/** The folder of src a file stands in; '' for a file in src itself. */
const layerOf = (file: string): string => /^src\/([^/]+)\//.exec(file)?.[1] ?? '';

const misplaced = (file: string): readonly string[] => {
  if (/(^|\/)index\.tsx?$/.test(file)) return [`${file} is a barrel file: import from where things live`];
  const layer = layerOf(file);
  if (layer === '') {
    const placed = ROOTS.includes(file) || LEAVES.includes(file);
    return placed ? [] : [`${file} stands in src itself without a place in the layers`];
  }
  return layer in LAYERS ? [] : [`${file}: the folder ${layer} has no place in the layers`];
};

const wrongImport = (file: string, name: string, known: ReadonlySet<string>): readonly string[] => {
  if (!name.startsWith('.')) return wrongPackage(file, name);
  const target = posix.join(posix.dirname(file), name);
  if (!known.has(target)) return [`${file} imports ${name}, and there is no such file`];
  return mayImport(file, target) ? [] : [`${file} may not import ${target}`];
};

const mayImport = (file: string, target: string): boolean => {
  if (LEAVES.includes(target)) return true;
  if (LEAVES.includes(file)) return false;
  if (ROOTS.includes(file)) return true;
  const from = layerOf(file);
  const to = layerOf(target);
  return from !== '' && (from === to || (LAYERS[from] ?? []).includes(to));
};

const wrongPackage = (file: string, name: string): readonly string[] => {
  const parts = name.split('/');
  const parcel = name.startsWith('@') ? parts.slice(0, 2).join('/') : (parts[0] ?? name);
  const homes = HOMES[parcel];
  if (homes === undefined) return [`${file} imports ${parcel}, which has no home`];
  const home = homes.some((place) => (place.endsWith('/') ? file.startsWith(place) : file === place));
  return home ? [] : [`${file} may not import ${parcel}: its home is ${homes.join(' and ')}`];
};

/** Each ring of files that import each other, told once, from the first of its files that is met. */
const cycles = (imports: ReadonlyMap<string, readonly string[]>): readonly string[] => {
  const done = new Set<string>();
  const found: string[] = [];
  const visit = (file: string, trail: readonly string[]): void => {
    const seen = trail.indexOf(file);
    if (seen >= 0) found.push(`a ring of imports: ${[...trail.slice(seen), file].join(' → ')}`);
    if (seen >= 0 || done.has(file)) return;
    for (const name of imports.get(file) ?? []) {
      if (name.startsWith('.')) visit(posix.join(posix.dirname(file), name), [...trail, file]);
    }
    done.add(file);
  };
  for (const file of imports.keys()) visit(file, []);
  return found;
};
