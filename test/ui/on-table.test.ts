import { describe, expect, it } from 'vitest';
import type { Values } from '../../src/caps/parameter.ts';
import { defaultSpec } from '../../src/design/default-spec.ts';
import type { Spec } from '../../src/design/spec.ts';
import type { PieceDrawing } from '../../src/drawing/drawing.ts';
import { onTable } from '../../src/ui/on-table.ts';

const wished = (values: Values): Spec => ({
  ...defaultSpec,
  cap: { ...defaultSpec.cap, values: { ...defaultSpec.cap.values, ...values } },
});

const drawingOf = (spec: Spec, id: string, unit: 'cm' | 'in' = 'cm'): PieceDrawing => {
  const found = onTable(spec, unit).find(({ drawing }) => drawing.id === id);
  if (!found) throw new Error(`no ${id} on the table`);
  return found.drawing;
};

describe('the pieces on the table', () => {
  it('keep the drawing of what a fuller crown leaves as it is, and draw the tip anew', () => {
    const [before, after] = [wished({}), wished({ crownFullness: 120 })];
    const [visor, tip] = [drawingOf(before, 'visor'), drawingOf(before, 'tip')];
    expect(drawingOf(after, 'visor')).toBe(visor);
    expect(drawingOf(after, 'tip')).not.toBe(tip);
    expect(drawingOf(after, 'tip').silhouette).not.toEqual(tip.silhouette);
  });

  it('are all drawn anew with another allowance, and with another unit', () => {
    const visor = drawingOf(wished({}), 'visor');
    const wider = drawingOf(wished({ allowance: 12 }), 'visor');
    expect(wider.silhouette).not.toEqual(visor.silhouette);
    expect(drawingOf(wished({ allowance: 12 }), 'visor', 'in').marks).not.toEqual(wider.marks);
  });
});
