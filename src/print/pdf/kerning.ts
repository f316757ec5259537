/** How much closer (-) or wider (+) a pair of glyphs is set, in thousandths of an em. */
export type Kerning = (left: number, right: number) => number;

/**
 * The kerning of a TrueType or OpenType font, from the pair adjustments of its `kern` feature (OpenType 1.9, GPOS
 * lookup types 2 and 9). Of a font without any: none.
 */
export const kerningOf = (font: Uint8Array): Kerning => {
  const view = new DataView(font.buffer, font.byteOffset, font.byteLength);
  const gpos = tableAt(view, 'GPOS');
  const head = tableAt(view, 'head');
  if (gpos === null || head === null) return () => 0;
  const unitsPerEm = view.getUint16(head + 18);
  const lookups = kernLookups(view, gpos);
  const known = new Map<number, number>();
  return (left, right) => {
    const key = left * 65536 + right;
    const before = known.get(key);
    if (before !== undefined) return before;
    const units = lookups.reduce((sum, subtables) => sum + firstOf(view, subtables, left, right), 0);
    const kern = Math.round((units * 1000) / unitsPerEm);
    known.set(key, kern);
    return kern;
  };
};

const tableAt = (view: DataView, tag: string): number | null => {
  const count = view.getUint16(4);
  for (let i = 0; i < count; i++) {
    const at = 12 + 16 * i;
    const name = String.fromCharCode(...[0, 1, 2, 3].map((k) => view.getUint8(at + k)));
    if (name === tag) return view.getUint32(at + 8);
  }
  return null;
};

const list = (view: DataView, at: number): number[] =>
  Array.from({ length: view.getUint16(at) }, (_, i) => view.getUint16(at + 2 + 2 * i));

/** The subtables of each lookup that the feature `kern` names, extensions followed. */
const kernLookups = (view: DataView, gpos: number): number[][] => {
  const features = gpos + view.getUint16(gpos + 6);
  const lookups = gpos + view.getUint16(gpos + 8);
  const wanted = new Set<number>();
  for (let i = 0; i < view.getUint16(features); i++) {
    const record = features + 2 + 6 * i;
    const isKern = view.getUint32(record) === KERN;
    if (isKern) for (const n of list(view, features + view.getUint16(record + 4) + 2)) wanted.add(n);
  }
  return [...wanted]
    .sort((a, b) => a - b)
    .map((n) => {
      const lookup = lookups + view.getUint16(lookups + 2 + 2 * n);
      const type = view.getUint16(lookup);
      return list(view, lookup + 4).flatMap((offset) => {
        const at = lookup + offset;
        if (type === 2) return [at];
        const isExtended = type === 9 && view.getUint16(at + 2) === 2;
        return isExtended ? [at + view.getUint32(at + 4)] : [];
      });
    });
};
const KERN = 0x6b65726e;

/** What the first subtable that knows the pair says, in font units. */
const firstOf = (view: DataView, subtables: readonly number[], left: number, right: number): number => {
  for (const at of subtables) {
    const index = coverageOf(view, at + view.getUint16(at + 2), left);
    if (index === null) continue;
    const value =
      view.getUint16(at) === 1 ? pairValue(view, at, index, right) : classValue(view, at, left, right);
    if (value !== null) return value;
  }
  return 0;
};

/** How a value record is laid out: bytes in all, and where its horizontal advance stands, or null. */
const recordOf = (format: number): { readonly size: number; readonly advance: number | null } => ({
  size: 2 * bits(format),
  advance: format & 4 ? 2 * bits(format & 3) : null,
});
const bits = (n: number): number => (n === 0 ? 0 : (n & 1) + bits(n >> 1));

const advanceIn = (view: DataView, record: number, advance: number | null): number =>
  advance === null ? 0 : view.getInt16(record + advance);

/** Format 1: pairs listed glyph by glyph, in order of the second. */
const pairValue = (view: DataView, at: number, index: number, right: number): number | null => {
  const first = recordOf(view.getUint16(at + 4));
  const size = 2 + first.size + recordOf(view.getUint16(at + 6)).size;
  const set = at + view.getUint16(at + 10 + 2 * index);
  let [low, high] = [0, view.getUint16(set) - 1];
  while (low <= high) {
    const middle = (low + high) >> 1;
    const record = set + 2 + middle * size;
    const glyph = view.getUint16(record);
    if (glyph === right) return advanceIn(view, record + 2, first.advance);
    if (glyph < right) low = middle + 1;
    else high = middle - 1;
  }
  return null;
};

/** Format 2: pairs of classes. It knows every pair whose first glyph it covers. */
const classValue = (view: DataView, at: number, left: number, right: number): number => {
  const first = recordOf(view.getUint16(at + 4));
  const size = first.size + recordOf(view.getUint16(at + 6)).size;
  const row = classOf(view, at + view.getUint16(at + 8), left);
  const column = classOf(view, at + view.getUint16(at + 10), right);
  return advanceIn(view, at + 16 + (row * view.getUint16(at + 14) + column) * size, first.advance);
};

/** A glyph's place in a coverage table, or null where it is not in it. */
const coverageOf = (view: DataView, at: number, glyph: number): number | null => {
  if (view.getUint16(at) === 1) {
    const index = list(view, at + 2).indexOf(glyph);
    return index < 0 ? null : index;
  }
  for (let i = 0; i < view.getUint16(at + 2); i++) {
    const range = at + 4 + 6 * i;
    const start = view.getUint16(range);
    if (glyph >= start && glyph <= view.getUint16(range + 2))
      return view.getUint16(range + 4) + glyph - start;
  }
  return null;
};

const classOf = (view: DataView, at: number, glyph: number): number => {
  if (view.getUint16(at) === 1) {
    const index = glyph - view.getUint16(at + 2);
    return index >= 0 && index < view.getUint16(at + 4) ? view.getUint16(at + 6 + 2 * index) : 0;
  }
  for (let i = 0; i < view.getUint16(at + 2); i++) {
    const range = at + 4 + 6 * i;
    if (glyph >= view.getUint16(range) && glyph <= view.getUint16(range + 2))
      return view.getUint16(range + 4);
  }
  return 0;
};
