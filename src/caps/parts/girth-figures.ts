import type { Figure } from '../../pattern/piece.ts';
import { exactMm, thickness, words } from '../../words.ts';
import { type Opening, openingOf } from '../opening.ts';
import type { Head } from '../style.ts';

/** What the arithmetic calls the girth that a layer is drawn on: its own where the cloth has a thickness. */
export const girthName = ({ finished }: Opening, girth: number, layer = 'shell'): string =>
  girth === finished ? 'finished girth' : `girth of the ${layer}`;

/** How the finished girth comes about, and from it that of the shell. The last is what the shell is drawn on. */
export const girthFigures = (head: Head, ease: number): readonly [Figure, ...Figure[]] => {
  const opening = openingOf(head, ease);
  return [
    {
      name: 'Finished girth',
      formula: 'head girth + ease',
      worked: words`${exactMm(head.girth)} + ${exactMm(ease)} = ${exactMm(opening.finished)}`,
    },
    ...shellFigure(opening),
  ];
};

/** How much further round the shell goes than the finished inside; nothing for cloth of no thickness. */
export const shellFigure = (opening: Opening): readonly Figure[] =>
  layerFigure(opening, opening.shell, 'shell');

/** The same of any layer: as much further as it lies off the head, from there to the middle of its cloth. */
export const layerFigure = ({ finished }: Opening, girth: number, layer: string): readonly Figure[] => {
  if (girth === finished) return [];
  return [
    {
      name: `Girth of the ${layer}`,
      formula: 'finished girth + 2π × cloth from the head to the middle of this layer',
      worked: words`${exactMm(finished)} + 6.2832 × ${thickness((girth - finished) / (2 * Math.PI))} = ${exactMm(girth)}`,
    },
  ];
};

/**
 * Round some place of the lining, mm: less than the shell there by the cloth between the two, and by what is taken off so that it
 * does not bag.
 */
export const liningGirth = (
  { shell, lining }: Opening,
  name: string,
  shellGirth: number,
  take: number,
): { readonly girth: number; readonly figure: Figure } => {
  const girth = shellGirth - (shell - lining) - take;
  const place = name.charAt(0).toLowerCase() + name.slice(1);
  return {
    girth,
    figure: {
      name: `${name} of the lining`,
      ...(shell === lining
        ? {
            formula: `${place} − lining smaller by`,
            worked: words`${exactMm(shellGirth)} − ${exactMm(take)} = ${exactMm(girth)}`,
          }
        : {
            formula: `${place} − 2π × cloth between the middles of shell and lining − lining smaller by`,
            worked: words`${exactMm(shellGirth)} − 6.2832 × ${thickness((shell - lining) / (2 * Math.PI))} − ${exactMm(take)} = ${exactMm(girth)}`,
          }),
    },
  };
};
