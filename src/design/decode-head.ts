import { defaultSpec } from './default-spec.ts';
import { isData, isName, isNumberOrNull, isRow, reader } from './reading.ts';
import type { FitNote, HeadSpec } from './spec.ts';

const MOST_READINGS = 3;

/** Reads a head; what is damaged takes its default and is named in `repaired`. */
export const decodeHead = (data: unknown, repaired: string[]): HeadSpec => {
  const { take } = reader(data, 'head', repaired);
  const { head } = defaultSpec;
  const fittings = isData(data) ? data.fittings : undefined;
  return {
    name: take('name', isName, head.name),
    readings: take('readings', isRow(MOST_READINGS, 1), head.readings),
    length: take('length', isNumberOrNull, head.length),
    breadth: take('breadth', isNumberOrNull, head.breadth),
    arc: take('arc', isNumberOrNull, head.arc),
    ...(fittings === undefined ? {} : { fittings: fittingsOf(fittings) }),
  };
};

/** Reads kept heads, leaving out whatever is damaged. */
export const decodeHeads = (data: unknown): readonly HeadSpec[] =>
  (Array.isArray(data) ? data : []).flatMap((one: unknown) => {
    const repaired: string[] = [];
    const head = decodeHead(one, repaired);
    return repaired.length === 0 ? head : [];
  });

/** Notes that can be read; others go without a word, since nothing follows from them. */
const fittingsOf = (data: unknown): readonly FitNote[] =>
  Array.isArray(data) ? data.filter(isNote).slice(-MOST_NOTES) : [];

/** As many fittings as a head is remembered by. */
export const MOST_NOTES = 20;
const MOST_FOUND = 20;

const isNote = (data: unknown): data is FitNote =>
  isData(data) &&
  isName(data.date) &&
  isName(data.style) &&
  Array.isArray(data.found) &&
  data.found.length <= MOST_FOUND &&
  data.found.every(isName) &&
  isData(data.changed) &&
  Object.values(data.changed).every((pair) => isRow(2, 2)(pair));
