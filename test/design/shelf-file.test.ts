import { expect, it } from 'vitest';
import { demoCaps, demoHeads } from '../../src/design/demo-band.ts';
import { readShelf, writeShelf } from '../../src/design/shelf-file.ts';
import { isSavedCap } from '../../src/state/shelved.ts';

const caps = demoCaps.map((saved) => ({ wish: saved, good: saved }));

it('a file gives back the caps and heads that were written', () => {
  const file = { caps, heads: demoHeads };
  expect(readShelf(writeShelf(file), isSavedCap)).toEqual(file);
});

it('what is damaged in a file is left out, and the rest is read', () => {
  const data = JSON.parse(writeShelf({ caps, heads: demoHeads }));
  data.caps[1] = 'a cap';
  data.heads[0].readings = [];
  expect(readShelf(JSON.stringify(data), isSavedCap)).toEqual({
    caps: [caps[0], caps[2]],
    heads: demoHeads.slice(1),
  });
});

it('a file of a later form is not read by halves', () => {
  const data = JSON.parse(writeShelf({ caps, heads: demoHeads }));
  for (const capwright of [data.capwright + 1, 1e9])
    expect(readShelf(JSON.stringify({ ...data, capwright }), isSavedCap)).toBe('later');
});

it.each(['', 'caps', '[]', '{"caps": []}', '{"capwright": 1}'])('%j is no such file', (text) => {
  expect(readShelf(text, isSavedCap)).toBeNull();
});
