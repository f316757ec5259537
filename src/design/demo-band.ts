import type { StyleId } from '../caps/registry.ts';
import { inches } from '../units.ts';
import { encodeSpec, type SavedSpec } from './decode.ts';
import { defaultSpec } from './default-spec.ts';
import type { HeadSpec } from './spec.ts';

const head = (name: string, girth: number): HeadSpec => ({
  name,
  readings: [inches(girth)],
  length: null,
  breadth: null,
  arc: null,
});

const tenorHorn = head('Tenor horn', 22.5);
const euphonium = head('Euphonium', 23.25);
const bassDrum = head('Bass drum', 24.25);

/** The heads of the demo, invented: players of the brass band by the canal. */
export const demoHeads: readonly HeadSpec[] = [defaultSpec.head, tenorHorn, euphonium, bassDrum];

/** A cap of usual values, which are filled in when it is read. */
const cap = (wearer: HeadSpec, style: StyleId, name: string): SavedSpec =>
  encodeSpec({ ...defaultSpec, head: wearer, cap: { style, name, values: {} } });

/** What lies on the shelf on a first visit. */
export const demoCaps: readonly SavedSpec[] = [
  cap(tenorHorn, 'gored', 'Tenor horn’s cap'),
  cap(euphonium, 'three-piece', 'Euphonium’s cap'),
  cap(bassDrum, 'bucket', 'Bass drum’s hat'),
];
