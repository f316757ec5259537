import { exactMm, mm, words } from '../../../words.ts';
import { openingOf } from '../../opening.ts';
import type { Fact, Head } from '../../style.ts';
import { girthName, shellFigure } from '../girth-figures.ts';
import type { GoreLayersWish } from './gore-layers.ts';
import { goreLength, goreLengthFigure } from './gore-length.ts';

/** What stands in plain sight of a crown of gores: one gore's lower edge and height, and the girth of a crown that bulges. */
export const goreFacts = (wish: GoreLayersWish, head: Head, bandHeight: number): readonly Fact[] => {
  const { gores, goreFullness: fullness = 0 } = wish;
  const opening = openingOf(head, wish.ease);
  const girth = opening.shell;
  const called = girthName(opening, girth);
  const base = girth / gores;
  return [
    {
      id: 'gore',
      name: 'Gore',
      figure: words`${mm(base)} × ${mm(goreLength(wish.crownRoom, head, bandHeight))}`,
      title: 'One gore',
      reckoning: [
        ...shellFigure(opening),
        {
          name: 'Lower edge of one gore',
          formula: `${called} ÷ number of gores`,
          worked: words`${exactMm(girth)} ÷ ${String(gores)} = ${exactMm(base)}`,
        },
        goreLengthFigure(wish.crownRoom, head, bandHeight),
      ],
    },
    ...(fullness > 0
      ? [
          {
            id: 'crown',
            name: 'Crown',
            figure: words`${mm(girth + fullness)}`,
            title: 'Crown girth at its widest',
            reckoning: [
              ...shellFigure(opening),
              {
                name: 'Crown girth at its widest',
                formula: `${called} + gore fullness`,
                worked: words`${exactMm(girth)} + ${exactMm(fullness)} = ${exactMm(girth + fullness)}`,
              },
            ],
          },
        ]
      : []),
  ];
};
