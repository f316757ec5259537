import { mm, words } from '../words.ts';
import type { Step, Thing } from './step.ts';
import { isLined, pieceOf, piecesOfPart, type Work } from './work.ts';

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
    ...(visored
      ? [{ name: 'Clips for the thick seam' }, { name: 'Strong shears or a craft knife for the stiffener' }]
      : []),
    ...(has('eyelets') ? [{ name: 'Awl, and eye guards' }] : []),
    ...(has('strapEdge') || has('backStrap') || has('tie') ? [{ name: 'Point turner, a blunt one' }] : []),
  ];
};

const needleName = ({ size, point }: { size: string; point: string }): string =>
  point === 'jeans' ? `${size} for jeans` : size;

export const notionsFor = (work: Work): readonly Thing[] => {
  const number = (key: string): number => Number(work.values[key] ?? 0);
  const sweat = pieceOf(work, 'sweatband');
  return [
    { name: 'Thread to match' },
    ...(sweat && sweat.name === 'Sweatband'
      ? [{ name: 'Sweatband or ribbon', words: words`${mm(number('sweatbandHeight'))} wide, if you buy it.` }]
      : []),
    ...(pieceOf(work, 'strap')
      ? [{ name: 'Two buttons', words: words`${mm(number('buttonDiameter'))} across.` }]
      : []),
    ...(pieceOf(work, 'topButton')
      ? [{ name: 'One button to cover', words: words`${mm(number('topButtonDiameter'))} across.` }]
      : []),
    ...(pieceOf(work, 'elasticCasing') ? [{ name: 'Elastic for the back' }] : []),
    ...(pieceOf(work, 'casing') && !pieceOf(work, 'tie')
      ? [{ name: 'Elastic', words: words`${mm(number('elasticLength'))} long.` }]
      : []),
    ...(pieceOf(work, 'backStrap') ? [{ name: 'Hook and loop tape, a press stud or a small buckle' }] : []),
    ...(pieceOf(work, 'stiffener')?.cuts.length === 0 ? [{ name: 'The visor insert you measured' }] : []),
    ...(hasLongSeams(work) && !isLined(work) ? [{ name: 'Bias tape for the seams inside' }] : []),
  ];
};

const hasLongSeams = ({ pattern }: Work): boolean =>
  pattern.pieces.some(({ outline }) => outline.some(({ kind }) => kind === 'gore'));
