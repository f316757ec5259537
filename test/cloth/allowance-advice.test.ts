import { describe, expect, test } from 'vitest';
import { allowanceAdvice } from '../../src/cloth/allowance-advice.ts';
import { clothOfKind, kindOf } from '../../src/cloth/kinds.ts';
import { defaultSpec } from '../../src/design/default-spec.ts';
import { inches } from '../../src/units.ts';
import { say } from '../../src/words.ts';

const clothOf = (id: string) => clothOfKind(kindOf({ kind: id })!, defaultSpec.cloths.outer);
/** In inches. */
const advised = (id: string, chosen: number): number | null => {
  const advice = allowanceAdvice(clothOf(id), inches(chosen));
  return advice && Math.round((advice.allowance / 25.4) * 1000) / 1000;
};

// Common practice: 1/4 in for plain cap cloth, 3/8 in for what frays or is thick, 1/2 in for tweed and corduroy, which do both.
describe('the seam allowance that a cloth wants', () => {
  test.each([
    ['poplin', null],
    ['denim', null],
    ['linen', 3 / 8],
    ['satin-lining', 3 / 8],
    ['melton', 3 / 8],
    ['tweed', 1 / 2],
    ['wide-corduroy', 1 / 2],
  ])('of %s cut with 1/4 in is %d in', (id, wanted) => {
    expect(advised(id, 1 / 4)).toBe(wanted);
  });

  test.each(['poplin', 'linen', 'melton', 'tweed', 'wide-corduroy'])(
    'of %s cut with 1/2 in is right',
    (id) => {
      expect(advised(id, 1 / 2)).toBeNull();
      expect(advised(id, 5 / 8)).toBeNull();
    },
  );

  test('is told with what is the matter', () => {
    const told = (id: string) => say(allowanceAdvice(clothOf(id), inches(1 / 4))!.message, 'cm');
    expect(told('linen')).toMatch(/^This cloth frays:/);
    expect(told('melton')).toMatch(/^This cloth is thick:/);
    expect(told('tweed')).toMatch(/^This cloth is thick and frays:/);
  });

  test('goes by the cloth as it was measured: tweed of 0.6 mm is not thick', () => {
    expect(allowanceAdvice({ ...clothOf('tweed'), thickness: 0.6 }, inches(1 / 4))!.allowance).toBe(
      inches(3 / 8),
    );
  });
});
