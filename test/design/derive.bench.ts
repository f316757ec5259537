import { bench, describe } from 'vitest';
import { defaultSpec } from '../../src/design/default-spec.ts';
import type { Draft } from '../../src/design/draft.ts';
import { timing } from '../house/processor-time.ts';
import { offsetInGeneral, polygonsOf } from '../pattern/general-offset.ts';
import { derive } from './derive.ts';

/** The demo cap, each call with another ease, so that nothing can be remembered from the call before. */
const drafts = (tipRatio: number): (() => Draft) => {
  let calls = 0;
  return () => {
    const ease = 6 + (calls++ % 9973) / 1000;
    const values = { ...defaultSpec.cap.values, tipRatio, ease };
    const { draft } = derive({ ...defaultSpec, cap: { ...defaultSpec.cap, values } });
    if (draft === null) throw new Error('the demo cap cannot be drafted');
    return draft;
  };
};

for (const [name, tipRatio] of [
  ['round tip', 1],
  ['oval tip', 0.85],
] as const) {
  const next = drafts(tipRatio);
  const { pieces } = next().pattern;

  describe(`spec to checked draft, ${name}`, () => {
    bench(
      'ours',
      () => {
        next();
      },
      timing,
    );

    bench(
      'clipper2-ts, offsetting its outlines',
      () => {
        offsetInGeneral(polygonsOf(pieces));
      },
      timing,
    );
  });
}
