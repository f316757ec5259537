import { describe, expect, it } from 'vitest';
import { defaultsOf, type Values } from '../../../src/caps/parameter.ts';
import { skull } from '../../../src/caps/skull/skull.ts';
import { defaultSpec } from '../../../src/design/default-spec.ts';
import type { Spec } from '../../../src/design/spec.ts';
import { type PaintOrder, toPaint } from '../../../src/ui/table/painting.ts';
import { seesAll } from '../../../src/ui/table/view.ts';

const wished = (values: Values): Spec => ({
  ...defaultSpec,
  cap: { ...defaultSpec.cap, values: { ...defaultSpec.cap.values, ...values } },
});

const order: PaintOrder = {
  spec: defaultSpec,
  ghost: null,
  unit: 'cm',
  chosen: null,
  lit: null,
  litSeam: null,
  chalks: { ink: '#000', paper: '#fff', dot: '#ccc', chalk: '#00f', madder: '#f00', font: 'serif' },
  size: { width: 900, height: 660 },
  ratio: 1,
  view: null,
  framed: true,
};

describe('what there is to paint by an order', () => {
  it('is every piece, framed so that all can be seen', async () => {
    const { scene, shown } = await toPaint(order);
    expect(scene.placed.map(({ drawing }) => drawing.id)).toContain('visor');
    expect(seesAll(shown.view, order.size, shown.bounds)).toBe(true);
  });

  it('keeps the view while the pieces stay within it, and follows them where they leave it', async () => {
    const { view } = (await toPaint(order)).shown;
    const smaller = await toPaint({ ...order, view, spec: wished({ sideBandHeight: 55 }) });
    expect(smaller.shown.view).toBe(view);
    const closer = { ...view, scale: 2 * view.scale };
    const { shown } = await toPaint({ ...order, view: closer });
    expect(seesAll(closer, order.size, shown.bounds)).toBe(false);
    expect(seesAll(shown.view, order.size, shown.bounds)).toBe(true);
  });

  it('leaves the view to the hand that has moved it, whatever it shows', async () => {
    const view = { centre: { x: 5000, y: 0 }, scale: 2 };
    expect((await toPaint({ ...order, view, framed: false })).shown.view).toBe(view);
  });

  it('knows a copy of a spec for the same, so that what is drawn is drawn once', async () => {
    const first = await toPaint({ ...order, ghost: wished({ crownFullness: 90 }) });
    const again = await toPaint(structuredClone({ ...order, ghost: wished({ crownFullness: 90 }) }));
    expect(again.scene.placed).toBe(first.scene.placed);
    expect(again.scene.ghost).toBe(first.scene.ghost);
    const other = await toPaint({ ...order, spec: wished({ crownFullness: 130 }) });
    expect(other.scene.placed).not.toBe(first.scene.placed);
    expect(other.shown.outline).not.toBe(first.shown.outline);
  });

  it('says the name, size and count of the piece that is lit, or else of the one that is chosen', async () => {
    expect((await toPaint(order)).shown.caption).toBeNull();
    expect((await toPaint({ ...order, chosen: 'visor' })).shown.caption?.name).toBe('Visor');
    expect((await toPaint({ ...order, chosen: 'visor', lit: 'tip' })).shown.caption?.name).toBe('Tip');
  });

  it('has both sides of a seam that is pointed at', async () => {
    expect((await toPaint(order)).scene.seam).toEqual([]);
    const { scene } = await toPaint({ ...order, litSeam: 'lowerEdge' });
    expect(scene.seam.length).toBeGreaterThan(1);
  });

  it('fetches the rules of a style that has not been on the table', async () => {
    const spec: Spec = {
      ...defaultSpec,
      cap: { ...defaultSpec.cap, style: 'skull', values: defaultsOf(skull.parameters) },
    };
    const { scene } = await toPaint({ ...order, spec });
    expect(scene.placed.length).toBeGreaterThan(1);
  });
});
