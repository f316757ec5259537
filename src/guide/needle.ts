import type { ClothSpec } from '../cloth/cloth.ts';

/** A machine needle: its number in the metric and the old system, and its point. */
export interface Needle {
  readonly size: '70/10' | '80/12' | '90/14' | '100/16' | '110/18';
  readonly point: 'universal' | 'jeans';
}

const universal = (size: Needle['size']): Needle => ({ size, point: 'universal' });

/** By the kind of cloth: the charts that needle makers print agree on these (common practice). */
const byKind: Readonly<Record<string, Needle>> = {
  'satin-lining': universal('70/10'),
  poplin: universal('80/12'),
  'quilting-cotton': universal('80/12'),
  linen: universal('80/12'),
  'fine-corduroy': universal('90/14'),
  'wide-corduroy': universal('90/14'),
  tweed: universal('90/14'),
  melton: universal('90/14'),
  felt: universal('90/14'),
  'boiled-wool': universal('90/14'),
  velvet: universal('80/12'),
  silk: universal('70/10'),
  brocade: universal('80/12'),
  denim: { size: '100/16', point: 'jeans' },
  canvas: { size: '100/16', point: 'jeans' },
};

/** Cloth of its own kind, by the thickness of one layer, mm; our own steps between the kinds above. */
const byThickness = (mm: number): Needle =>
  mm <= 0.2
    ? universal('70/10')
    : mm <= 0.5
      ? universal('80/12')
      : mm <= 0.9
        ? universal('90/14')
        : mm <= 2
          ? universal('100/16')
          : universal('110/18');

/** Null where neither the kind nor the thickness is known. */
const needleFor = (cloth: ClothSpec): Needle | null =>
  byKind[cloth.kind] ?? (cloth.thickness > 0 ? byThickness(cloth.thickness) : null);

/** The needle for several cloths at once: that of the heaviest. */
export const needleForAll = (cloths: readonly ClothSpec[]): Needle | null => {
  const needles = cloths.map(needleFor).filter((needle) => needle !== null);
  return needles.sort((a, b) => Number.parseInt(b.size, 10) - Number.parseInt(a.size, 10))[0] ?? null;
};
