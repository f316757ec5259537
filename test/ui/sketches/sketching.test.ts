import { describe, expect, test } from 'vitest';
import { styleIds } from '../../../src/caps/registry.ts';
import { defaultSpec } from '../../../src/design/default-spec.ts';
import type { Spec } from '../../../src/design/spec.ts';
import { boxHeight, boxWidth } from '../../../src/geometry/box.ts';
import { sketched } from '../../../src/ui/sketches/sketching.ts';

const withHead = (girth: number): Spec => ({
  ...defaultSpec,
  head: { ...defaultSpec.head, readings: [girth] },
});
const withValues = (values: Spec['cap']['values']): Spec => ({
  ...defaultSpec,
  cap: { ...defaultSpec.cap, values: { ...defaultSpec.cap.values, ...values } },
});

describe('the sketches of a cap', () => {
  test('are one for each style, no two alike, in the order asked for', async () => {
    const pictures = await sketched({ spec: defaultSpec, styles: styleIds });
    const drawn = pictures.map(({ patches }) => patches.join());
    expect(new Set(drawn).size).toBe(styleIds.length);
    const turned = await sketched({ spec: defaultSpec, styles: [...styleIds].reverse() });
    expect(turned.map(({ patches }) => patches.join()).reverse()).toEqual(drawn);
  });

  test('show the cap as it is where no style is named', async () => {
    const higher = withValues({ sideBandHeight: 90 });
    const [usual] = await sketched({ spec: defaultSpec });
    const [own] = await sketched({ spec: higher });
    expect([own]).toEqual(await sketched({ spec: higher, styles: [higher.cap.style] }));
    expect(boxHeight(own!.box)).toBeGreaterThan(boxHeight(usual!.box));
  });

  test('grow with the head in every style', async () => {
    const [small, large] = await Promise.all(
      [520, 600].map((girth) => sketched({ spec: withHead(girth), styles: styleIds })),
    );
    for (const [i, id] of styleIds.entries()) {
      const ratio = boxWidth(large![i]!.box) / boxWidth(small![i]!.box);
      expect(ratio, id).toBeGreaterThan(1.03);
      expect(ratio, id).toBeLessThan(1.2);
    }
  });

  test('keep of the cap what the other style has too', async () => {
    const styles = ['pillbox'] as const;
    const [usual] = await sketched({ spec: defaultSpec, styles });
    const [roomy] = await sketched({ spec: withValues({ ease: 40 }), styles });
    expect(boxWidth(roomy!.box)).toBeGreaterThan(boxWidth(usual!.box));
  });

  test('are none of a cap that cannot be sewn', async () => {
    expect(await sketched({ spec: { ...defaultSpec, head: { ...defaultSpec.head, readings: [] } } })).toEqual(
      [],
    );
  });
});
