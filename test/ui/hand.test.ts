import { expect, test } from 'vitest';
import { fileName } from '../../src/ui/hand.ts';

const bytes = (text: string): number => Buffer.byteLength(text, 'utf8');

test('a cap’s name is its file’s name, without what file systems refuse', () => {
  expect(fileName('Cornet’s cap')).toBe('Cornet’s cap');
  expect(fileName(' Blue / grey:\n"best" ')).toBe('Blue grey best');
  expect(fileName('  ')).toBe('Cap');
});

test('a cap that is called like a device gets a file all the same', () => {
  for (const name of ['CON', 'nul', 'Com1', 'aux.b']) expect(fileName(name)).toMatch(/ cap/);
  expect(fileName('Conductor')).toBe('Conductor');
});

test('a long name keeps within 255 bytes with what is added to it, and no character is cut in two', () => {
  for (const sign of ['a', 'é', '帽', '🧢']) {
    const name = fileName(`x${sign.repeat(120)}`);
    expect(bytes(`${name}, sewing.pdf`)).toBeLessThanOrEqual(255);
    expect(name).toMatch(new RegExp(`^x(${sign})+$`, 'u'));
  }
});
