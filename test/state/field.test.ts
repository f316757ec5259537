import { describe, expect, it } from 'vitest';
import { flatTopParameters } from '../../src/caps/flat-top/parameters.ts';
import { defaultSpec } from '../../src/design/default-spec.ts';
import { type FieldId, readField, writeField } from '../../src/state/field.ts';

describe('a field', () => {
  it('is written where it is read, and touches nothing else', () => {
    const named = writeField(defaultSpec, 'cap.name', 'Weekday cap');
    const changes: readonly (readonly [FieldId, number | string | boolean | null])[] = [
      ['head.name', 'Euphonium'],
      ['head.girth', 590],
      ['head.length', 200],
      ['cap.name', 'Sunday cap'],
      ['cap.ease', 20],
      ['cap.strap', false],
      ['paper.paper', 'letter'],
      ['paper.margin', 12],
    ];
    for (const [id, value] of changes) {
      const after = writeField(named, id, value);
      expect(readField(after, id)).toBe(value);
      for (const [other] of changes) {
        if (other !== id) expect(readField(after, other)).toBe(readField(named, other));
      }
    }
  });

  it('reads every parameter of the cap', () => {
    for (const [key, parameter] of Object.entries(flatTopParameters)) {
      expect(readField(defaultSpec, `cap.${key}`)).toEqual(parameter.default);
    }
  });

  it('leaves the very same spec where nothing changes, so that nothing is worked out again', () => {
    expect(writeField(defaultSpec, 'cap.ease', defaultSpec.cap.values.ease!)).toBe(defaultSpec);
    expect(writeField(defaultSpec, 'cap.insertWidths', [])).toBe(defaultSpec);
    expect(writeField(defaultSpec, 'head.girth.2', null)).toBe(defaultSpec);
  });
});

describe('readings of a head', () => {
  const three = writeField(writeField(defaultSpec, 'head.girth.2', 550), 'head.girth.3', 552);

  it('stand in the order they were taken', () => {
    expect(three.head.readings).toEqual([defaultSpec.head.readings[0], 550, 552]);
  });
  it('close up when one is taken away', () => {
    expect(writeField(three, 'head.girth.2', null).head.readings).toEqual([
      defaultSpec.head.readings[0],
      552,
    ]);
  });
  it('never leave a gap: a third reading without a second is the second', () => {
    expect(writeField(defaultSpec, 'head.girth.3', 552).head.readings).toEqual([
      defaultSpec.head.readings[0],
      552,
    ]);
  });
  it('that were not taken read as empty', () => {
    expect(readField(defaultSpec, 'head.girth.3')).toBeNull();
  });
});
