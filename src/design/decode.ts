import type { Parameter, ParameterTable, ParameterValue, Values } from '../caps/parameter.ts';
import { isStyleId, styleOf } from '../caps/registry.ts';
import { type ClothSpec, type Cloths, MOST_CORNERS, MOST_SCRAPS, type Scrap } from '../cloth/cloth.ts';
import type { Point } from '../geometry/point.ts';
import type { Cloth } from '../pattern/piece.ts';
import type { PaperName, PaperSpec } from '../print/paper.ts';
import { decodeHead } from './decode-head.ts';
import { defaultSpec } from './default-spec.ts';
import {
  type Data,
  isBoolean,
  isData,
  isName,
  isNumber,
  isNumberOrNull,
  isOneOf,
  isRow,
  type Reader,
  reader,
} from './reading.ts';
import type { CapSpec, Spec } from './spec.ts';

/** The form of saved specs. Raise it when the form changes, and add the step from the old one to `migrations`. */
export const SPEC_VERSION = 1;

export interface SavedSpec {
  readonly version: number;
  readonly spec: Spec;
}

/** Saved in a form that only a later program knows. */
export const isLater = ({ version }: SavedSpec): boolean => version > SPEC_VERSION;

/** What could be read, and the fields (such as 'cap.ease') that were damaged and stand at their defaults instead. */
export interface Decoded {
  readonly spec: Spec;
  readonly repaired: readonly string[];
}

/** From each version to the next, on undecoded data. */
const migrations: Readonly<Record<number, (spec: Data) => Data>> = {};

export const encodeSpec = (spec: Spec): SavedSpec => ({ version: SPEC_VERSION, spec });

/**
 * Reads a saved spec of any version. Never throws: what is missing or damaged takes its default and is named in
 * `repaired`. A wish that cannot be sewn is not damage: a finite number outside its range is kept as wished.
 */
export const decodeSpec = (saved: unknown): Decoded => {
  if (!isData(saved) || !isData(saved.spec)) return { spec: defaultSpec, repaired: ['spec'] };
  const repaired: string[] = [];
  const data = migrated(saved.spec, saved.version);
  const spec: Spec = {
    head: decodeHead(data.head, repaired),
    cap: decodeCap(data.cap, repaired),
    cloths: decodeCloths(data.cloths, repaired),
    paper: decodePaper(reader(data.paper, 'paper', repaired)),
    unit: reader(data, '', repaired).take('unit', isOneOf('cm', 'in'), defaultSpec.unit),
  };
  return { spec, repaired };
};

const migrated = (spec: Data, version: unknown): Data => {
  let data = spec;
  for (let v = typeof version === 'number' ? version : SPEC_VERSION; migrations[v] !== undefined; v++) {
    data = migrations[v]!(data);
  }
  return data;
};

const MOST_WIDTHS = 12;

const isValue = (value: unknown): value is ParameterValue =>
  isNumberOrNull(value) || isBoolean(value) || isName(value) || isRow(MOST_WIDTHS)(value);
const isPoint = (value: unknown): value is Point => isData(value) && isNumber(value.x) && isNumber(value.y);
const isRing = (value: unknown): value is readonly Point[] =>
  Array.isArray(value) && value.length >= 3 && value.length <= MOST_CORNERS && value.every(isPoint);
const isScraps = (value: unknown): value is readonly Scrap[] =>
  Array.isArray(value) &&
  value.every(
    (one) => isData(one) && isRing(one.outline) && Array.isArray(one.flaws) && one.flaws.every(isRing),
  );

const decodeCap = (data: unknown, repaired: string[]): CapSpec => {
  const { cap } = defaultSpec;
  const { take } = reader(data, 'cap', repaired);
  const values = take('values', isData, {});
  const style = take('style', isStyleId, cap.style);
  return {
    style,
    name: take('name', isName, cap.name),
    values: {
      ...otherValues(values),
      ...decodeValues(styleOf(style).parameters, values, reader(values, 'cap', repaired)),
    },
  };
};

/** One value for each row of a style's table. A missing one is newer than the saved spec, not damaged. */
const decodeValues = (table: ParameterTable, values: Data, { take }: Reader): Values =>
  Object.fromEntries(
    Object.entries(table).map(([key, parameter]): [string, ParameterValue] => {
      const fallback: ParameterValue = parameter.default;
      return [key, values[key] === undefined ? fallback : take(key, fits(parameter), fallback)];
    }),
  );

/** What was wished of other styles is kept for the way back; what is no value at all goes without a word. */
const otherValues = (values: Data): Values =>
  Object.fromEntries(
    Object.entries(values).filter((entry): entry is [string, ParameterValue] => isValue(entry[1])),
  );

/** Those of some values that a table can hold, by name. */
export const valuesThatFit = (table: ParameterTable, values: Values): Values =>
  Object.fromEntries(
    Object.entries(values).filter(([key, value]) => table[key] !== undefined && fits(table[key])(value)),
  );

const fits = (parameter: Parameter): ((value: unknown) => value is ParameterValue) => {
  switch (parameter.kind) {
    case 'length':
    case 'angle':
    case 'ratio':
    case 'count':
      return isNumber;
    case 'following':
      return isNumberOrNull;
    case 'choice':
      return isOneOf(...parameter.options.map(({ value }) => value));
    case 'switch':
      return isBoolean;
    case 'row':
      return isRow(parameter.most);
  }
};

/** Cloths are younger than the first saved specs: missing ones are no damage. */
const decodeCloths = (data: unknown, repaired: string[]): Cloths => {
  const { cloths } = defaultSpec;
  if (data === undefined) return cloths;
  const all = isData(data) ? data : {};
  if (!isData(data)) repaired.push('cloths');
  const one = (name: Cloth): ClothSpec =>
    all[name] === undefined
      ? cloths[name]
      : decodeCloth(reader(all[name], `cloth.${name}`, repaired), cloths[name]);
  return {
    outer: one('outer'),
    lining: one('lining'),
    interlining: one('interlining'),
    stiffener: one('stiffener'),
  };
};

const decodeCloth = ({ take }: Reader, usual: ClothSpec): ClothSpec => ({
  kind: take('kind', isName, usual.kind),
  thickness: take('thickness', isNumber, usual.thickness),
  width: take('width', isNumber, usual.width),
  nap: take('nap', isBoolean, usual.nap),
  cross: take('cross', isBoolean, usual.cross),
  bias: take('bias', isBoolean, usual.bias),
  shrinkLength: take('shrinkLength', isNumber, usual.shrinkLength),
  shrinkWidth: take('shrinkWidth', isNumber, usual.shrinkWidth),
  washed: take('washed', isBoolean, usual.washed),
  folded: take('folded', isBoolean, usual.folded),
  length: take('length', isNumberOrNull, usual.length),
  scraps: take('scraps', isScraps, usual.scraps).slice(0, MOST_SCRAPS),
  price: take('price', isNumberOrNull, usual.price),
});

const decodePaper = ({ take }: Reader): PaperSpec => {
  const { paper } = defaultSpec;
  return {
    paper: take('paper', isOneOf(...paperNames), paper.paper),
    orientation: take('orientation', isOneOf('portrait', 'landscape'), paper.orientation),
    margin: take('margin', isNumber, paper.margin),
    join: take('join', isOneOf('overlap', 'butt'), paper.join),
    overlap: take('overlap', isNumber, paper.overlap),
    halves: take('halves', isBoolean, paper.halves),
    measuredAcross: take('measuredAcross', isNumber, paper.measuredAcross),
    measuredDown: take('measuredDown', isNumber, paper.measuredDown),
  };
};

/** Written as a record so that a paper added to the type cannot be forgotten here. */
const everyPaper: Readonly<Record<PaperName, true>> = {
  a4: true,
  letter: true,
  a3: true,
  legal: true,
  tabloid: true,
  'roll-610': true,
  'roll-914': true,
  'roll-1067': true,
  'roll-594': true,
  'roll-841': true,
  'one-page': true,
};
const paperNames = Object.keys(everyPaper) as readonly PaperName[];
