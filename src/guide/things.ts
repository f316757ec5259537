import { clothsOf } from '../pattern/cloths-of.ts';
import { words } from '../words.ts';
import { notionsOf } from './notions.ts';
import type { Step, Thing } from './step.ts';
import { piecesOfPart, type Work } from './work.ts';

/** What to have at hand: common practice, and only what this cap needs. */
export const toolsFor = (work: Work, steps: readonly Step[]): readonly Thing[] => {
  const needles = [...new Set(steps.flatMap(({ settings }) => settings.needle ?? []).map(needleName))];
  const has = (id: string): boolean => steps.some((step) => step.id === id);
  const visored = piecesOfPart(work, 'visor').length > 0;
  return [
    { name: 'Shears, small scissors, pins' },
    { name: 'Tape measure and chalk' },
    {
      name: needles.length > 0 ? `Machine needles ${needles.join(', ')}` : 'Machine needles',
      words:
        needles.length > 0
          ? words`Take a new one after some eight hours of sewing.`
          : words`For light cloth 70/10 or 80/12, for middling 90/14, for heavy 100/16. Choose the cloth on the Cloth stage for more.`,
    },
    { name: 'Hand needle and thimble' },
    { name: 'Iron, press cloth, ham or rolled towel' },
    ...(visored ? [{ name: 'Clips for the thick seam' }] : []),
    ...(clothsOf(work.pattern.pieces).includes('stiffener')
      ? [{ name: 'Strong shears or a craft knife for the stiffener' }]
      : []),
    ...(has('eyelets') ? [{ name: 'Awl, and eye guards' }] : []),
    ...(has('strapEdge') || has('backStrap') || has('tie') ? [{ name: 'Point turner, a blunt one' }] : []),
  ];
};

const needleName = ({ size, point }: { size: string; point: string }): string =>
  point === 'jeans' ? `${size} for jeans` : size;

export const notionsFor = (work: Work): readonly Thing[] => [
  { name: 'Thread to match' },
  ...notionsOf(work).map(({ name, size }) => (size === undefined ? { name } : { name, words: size })),
];
