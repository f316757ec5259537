import { type Point, point } from '../../geometry/point.ts';
import type { Piece } from '../../pattern/piece.ts';
import type { ChoiceParameter, ParameterGroup } from '../parameter.ts';

/** How the grain runs in a straight strip that goes round the head. */
export type StripGrain = 'along' | 'across';

/** What can be wished of the grain of such a strip, by the name it has in plain words: "band". */
export const stripGrainParameter = <G extends ParameterGroup>(strip: string, group: G) =>
  ({
    kind: 'choice',
    label: `Grain of the ${strip}`,
    help: `Along it the ${strip} stretches least; across it a shorter piece of cloth will do.`,
    group,
    options: [
      { value: 'along', label: 'Along it' },
      { value: 'across', label: 'Across it' },
    ],
    default: 'along',
  }) as const satisfies ChoiceParameter;

/** The grainline of a strip that stands on y = 0 about x = 0, on the side of the wearer's left; `grainBy` names the row of the table that turns it. Lengths in mm. */
export const stripGrain = (
  length: number,
  height: number,
  grain: StripGrain,
  grainBy: string,
): Pick<Piece, 'grain' | 'grainBy'> => {
  const at = (x: number, y: number): Point => point(length * x, height * y);
  return {
    grain: grain === 'along' ? [at(0.06, 0.5), at(0.14, 0.5)] : [at(0.1, 0.2), at(0.1, 0.8)],
    grainBy,
  };
};
