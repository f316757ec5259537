import { describe, expect, test } from 'vitest';
import { nameFollowing, nameForWearer } from '../../src/design/cap-name.ts';
import { defaultSpec } from '../../src/design/default-spec.ts';
import { writeField } from '../../src/state/field.ts';

describe('the name of a cap', () => {
  test('follows its wearer, so that no pattern for one head is named for another', () => {
    const { cap } = writeField(defaultSpec, 'head.name', 'Euphonium');
    expect(defaultSpec.cap.name).toBe(nameForWearer(defaultSpec.head.name));
    expect(cap.name).toBe('Euphonium’s cap');
  });

  test('follows letter by letter, also where all letters were taken away first', () => {
    const typed = ['', 'E', 'Eu', 'Eup '].reduce(
      (spec, name) => writeField(spec, 'head.name', name),
      defaultSpec,
    );
    expect(typed.cap.name).toBe('Eup’s cap');
    expect(writeField(typed, 'head.name', '').cap.name).toBe('Cap');
  });

  test('keeps its number, and stays a hat', () => {
    expect(nameFollowing('Bass drum’s hat', 'Bass drum', 'Cornet')).toBe('Cornet’s hat');
    expect(nameFollowing('Cornet’s cap 2', 'Cornet', 'Horn')).toBe('Horn’s cap 2');
  });

  test('stays where it was given', () => {
    for (const given of ['Sunday cap', 'Cornet’s cap for rain', 'Cornet’s other cap', 'Horn’s cap', '']) {
      expect(nameFollowing(given, 'Cornet', 'Euphonium')).toBe(given);
    }
  });
});
