import { bench, describe } from 'vitest';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { fetchStyles } from '../../src/caps/registry.ts';
import { defaultSpec } from '../../src/design/default-spec.ts';
import { derive } from '../design/derive.ts';
import { timing } from '../house/processor-time.ts';
import { offsetInGeneral, polygonsOf } from '../pattern/general-offset.ts';

/** Every style as it comes, from spec to checked draft; each call with another ease, so that nothing can be remembered. */
for (const style of await fetchStyles()) {
  const defaults = defaultsOf(style.parameters);
  let calls = 0;
  const next = () => {
    const ease = 6 + (calls++ % 9973) / 1000;
    const cap = {
      ...defaultSpec.cap,
      style: style.id as typeof defaultSpec.cap.style,
      values: { ...defaults, ease },
    };
    const { draft, problems } = derive({ ...defaultSpec, cap });
    if (draft === null) throw new Error(`${style.id} cannot be drafted: ${JSON.stringify(problems)}`);
    return draft;
  };
  const { pieces } = next().pattern;

  describe(`spec to checked draft, ${style.name.toLowerCase()}`, () => {
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
