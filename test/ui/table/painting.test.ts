import { describe, expect, it } from 'vitest';
import { defaultsOf, type Values } from '../../../src/caps/parameter.ts';
import { skull } from '../../../src/caps/skull/skull.ts';
import { defaultSpec } from '../../../src/design/default-spec.ts';
import type { Spec } from '../../../src/design/spec.ts';
import { inShort } from '../../../src/ui/in-short.ts';
import { type PaintOrder, toPaint } from '../../../src/ui/table/painting.ts';
import { seesAll } from '../../../src/ui/table/view.ts';
import { derive } from '../../design/derive.ts';

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

  it('has every piece in words, in the unit that is asked for', async () => {
    const { scene, shown } = await toPaint({ ...order, unit: 'in' });
    expect(shown.pieces.map(({ id }) => id)).toEqual(scene.placed.map(({ drawing }) => drawing.id));
    expect(shown.pieces.find(({ id }) => id === 'visor')?.size).toMatch(/ in$/);
  });

  it('has with the picture what is said of the cap that it shows', async () => {
    const spec = wished({ crownFullness: 120, visorSource: 'insert', lining: false });
    const { shown } = await toPaint(structuredClone({ ...order, spec }));
    const draft = derive(spec).draft!;
    expect(shown.inShort).toEqual(inShort(draft));
    expect(shown.inShort).toMatchObject({
      finishedGirth: draft.finishedGirth,
      meeting: draft.seams.length,
      insert: draft.insert,
      lined: false,
    });
    expect(draft.insert).not.toBeNull();
    expect((await toPaint(order)).shown.inShort?.lined).toBe(true);
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
