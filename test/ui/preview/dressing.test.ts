import { describe, expect, it } from 'vitest';
import type { Values } from '../../../src/caps/parameter.ts';
import { defaultSpec } from '../../../src/design/default-spec.ts';
import type { Spec } from '../../../src/design/spec.ts';
import { type DressOrder, dress } from '../../../src/ui/preview/dressing.ts';

const wished = (values: Values): Spec => ({
  ...defaultSpec,
  cap: { ...defaultSpec.cap, values: { ...defaultSpec.cap.values, ...values } },
});

const order: DressOrder = { spec: defaultSpec, tilted: false, withLining: false, litSeam: null };

describe('a cap put on its head', () => {
  it('comes with the head once, and again with another head only', async () => {
    expect((await dress(order))?.head?.position.length).toBeGreaterThan(1000);
    expect((await dress({ ...order, spec: wished({ crownFullness: 120 }) }))?.head).toBeNull();
    const larger = { ...defaultSpec, head: { ...defaultSpec.head, readings: [600] } };
    expect((await dress({ ...order, spec: larger }))?.head).not.toBeNull();
  });

  it('is marked by its shape, whoever sends its spec over', async () => {
    const [one, same, other] = [
      await dress(order),
      await dress(structuredClone(order)),
      await dress({ ...order, spec: wished({ crownFullness: 120 }) }),
    ];
    expect(same?.mark).toBe(one?.mark);
    expect(other?.mark).not.toBe(one?.mark);
  });

  it('has its lining where it can be seen, and not where it is hidden', async () => {
    const parts = async (withLining: boolean): Promise<readonly string[]> =>
      (await dress({ ...order, withLining }))?.cloth.parts ?? [];
    expect(await parts(true)).toEqual(expect.arrayContaining(['tip', 'liningTip']));
    expect(await parts(false)).not.toContain('liningTip');
  });

  it('shows both sides of the seam that is pointed at', async () => {
    expect((await dress(order))?.seam).toEqual([]);
    expect((await dress({ ...order, litSeam: 'lowerEdge' }))?.seam.length).toBeGreaterThan(0);
  });

  it('is none where the wish cannot be sewn', async () => {
    expect(await dress({ ...order, spec: wished({ crownFullness: 5000 }) })).toBeNull();
  });
});
