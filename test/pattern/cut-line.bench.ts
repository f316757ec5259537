import { bench, describe } from 'vitest';
import { defaultSpec } from '../../src/design/default-spec.ts';
import { cutLine } from '../../src/pattern/cut-line.ts';
import { derive } from '../design/derive.ts';
import { timing } from '../house/processor-time.ts';
import { offsetInGeneral, polygonsOf } from './general-offset.ts';

for (const [name, tipRatio] of [
  ['round tip', 1],
  ['oval tip', 0.85],
] as const) {
  const cap = { ...defaultSpec.cap, values: { ...defaultSpec.cap.values, tipRatio } };
  const { draft } = derive({ ...defaultSpec, cap });
  if (draft === null) throw new Error('the demo cap cannot be drafted');
  const { pieces, allowances } = draft.pattern;
  const polygons = polygonsOf(pieces);

  describe(`cut lines of all pieces, ${name}`, () => {
    bench(
      'ours',
      () => {
        for (const piece of pieces) cutLine(piece, allowances);
      },
      timing,
    );

    bench(
      'clipper2-ts, flattening first',
      () => {
        offsetInGeneral(polygonsOf(pieces));
      },
      timing,
    );

    bench(
      'clipper2-ts, flattened beforehand',
      () => {
        offsetInGeneral(polygons);
      },
      timing,
    );
  });
}
