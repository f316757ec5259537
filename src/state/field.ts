import type { ParameterValue } from '../caps/parameter.ts';
import type { ClothSpec } from '../cloth/cloth.ts';
import { nameFollowing } from '../design/cap-name.ts';
import type { HeadSpec, Spec } from '../design/spec.ts';
import type { Cloth } from '../pattern/piece.ts';
import type { PaperSpec } from '../print/paper.ts';

/**
 * The name of one thing the user can wish, as problems name it too: 'head.girth', 'cap.ease', 'paper.margin',
 * 'cloth.outer.thickness'.
 * The second and third readings of the girth are 'head.girth.2' and 'head.girth.3'.
 */
export type FieldId =
  | `head.${string}`
  | `cap.${string}`
  | `paper.${string}`
  | `cloth.${Cloth}.${Exclude<keyof ClothSpec, 'scraps'>}`;

/** The value a field has in a spec; null where an optional one is empty. */
export const readField = (spec: Spec, id: FieldId): ParameterValue => {
  const [part, key] = halves(id);
  if (part === 'head') {
    const reading = readingOf(id);
    return reading === null ? spec.head[key as HeadKey] : (spec.head.readings[reading] ?? null);
  }
  if (part === 'paper') return spec.paper[key as PaperKey];
  if (part === 'cloth') {
    const [cloth, what] = clothKey(key);
    return spec.cloths[cloth][what];
  }
  return key === 'name' ? spec.cap.name : (spec.cap.values[key] ?? null);
};

/** The spec with one field changed; the very same spec where nothing changes. A null reading is taken off the list. */
export const writeField = (spec: Spec, id: FieldId, value: ParameterValue): Spec => {
  if (sameValue(readField(spec, id), value)) return spec;
  const [part, key] = halves(id);
  if (id === 'head.name') return withWearer(spec, String(value));
  if (part === 'head') return { ...spec, head: writeHead(spec.head, id, value) };
  if (part === 'paper') return { ...spec, paper: { ...spec.paper, [key]: value } };
  if (part === 'cloth') {
    const [cloth, what] = clothKey(key);
    return { ...spec, cloths: { ...spec.cloths, [cloth]: { ...spec.cloths[cloth], [what]: value } } };
  }
  if (key === 'name') return { ...spec, cap: { ...spec.cap, name: String(value) } };
  return { ...spec, cap: { ...spec.cap, values: { ...spec.cap.values, [key]: value } } };
};

/** The head called otherwise, and its cap with it unless that was given a name of its own. */
const withWearer = ({ head, cap, ...spec }: Spec, name: string): Spec => ({
  ...spec,
  head: { ...head, name },
  cap: { ...cap, name: nameFollowing(cap.name, head.name, name) },
});

export const sameValue = (a: ParameterValue, b: ParameterValue): boolean =>
  Array.isArray(a) && Array.isArray(b) ? a.length === b.length && a.every((n, i) => n === b[i]) : a === b;

type HeadKey = Exclude<keyof HeadSpec, 'readings' | 'fittings'>;
type PaperKey = keyof PaperSpec;

const halves = (id: FieldId): [string, string] => {
  const dot = id.indexOf('.');
  return [id.slice(0, dot), id.slice(dot + 1)];
};

/** 'outer.thickness' as the cloth and what of it. */
const clothKey = (key: string) => key.split('.') as [Cloth, Exclude<keyof ClothSpec, 'scraps'>];

const readings: readonly FieldId[] = ['head.girth', 'head.girth.2', 'head.girth.3'];
const readingOf = (id: FieldId): number | null => {
  const at = readings.indexOf(id);
  return at < 0 ? null : at;
};

const writeHead = (head: HeadSpec, id: FieldId, value: ParameterValue): HeadSpec => {
  const at = readingOf(id);
  if (at === null) return { ...head, [halves(id)[1]]: value };
  const next = [...head.readings];
  if (value === null) next.splice(at, 1);
  else next[Math.min(at, next.length)] = Number(value);
  return { ...head, readings: next };
};
