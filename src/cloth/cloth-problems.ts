import type { Problem } from '../pattern/problem.ts';
import { mm, ratio, words } from '../words.ts';
import type { ClothSpec, Cloths } from './cloth.ts';
import { MOST_SHRINKAGE } from './shrinkage.ts';

/** Thicker than any cloth a cap is sewn from, and narrower or wider than any it comes in, mm. */
const MOST_THICKNESS = 6;
const LENGTHS = { least: 50, most: 50_000 };
const WIDTHS = { least: 100, most: 4000 };

/** What of the cloths cannot be, each with the nearest value that can. */
export const clothProblems = (cloths: Cloths): readonly Problem[] =>
  Object.entries(cloths).flatMap(([name, cloth]) => problemsOf(`cloth.${name}`, cloth));

const problemsOf = (field: string, cloth: ClothSpec): readonly Problem[] => [
  ...within(
    `${field}.thickness`,
    cloth.thickness,
    0,
    MOST_THICKNESS,
    () => words`A layer is up to ${mm(MOST_THICKNESS)} thick.`,
  ),
  ...within(
    `${field}.width`,
    cloth.width,
    WIDTHS.least,
    WIDTHS.most,
    () => words`Cloth is between ${mm(WIDTHS.least)} and ${mm(WIDTHS.most)} wide.`,
  ),
  ...(['shrinkLength', 'shrinkWidth'] as const).flatMap((key) =>
    within(
      `${field}.${key}`,
      cloth[key],
      0,
      MOST_SHRINKAGE,
      () => words`Up to ${ratio(MOST_SHRINKAGE)}: cloth that shrinks more is washed before it is cut.`,
    ),
  ),
  ...within(
    `${field}.length`,
    cloth.length ?? LENGTHS.least,
    LENGTHS.least,
    LENGTHS.most,
    () => words`A piece of cloth is between ${mm(LENGTHS.least)} and ${mm(LENGTHS.most)} long.`,
  ),
  ...within(`${field}.price`, cloth.price ?? 0, 0, 1e4, () => words`A price is not less than nothing.`),
];

const within = (
  field: string,
  value: number,
  least: number,
  most: number,
  message: () => Problem['message'],
): readonly Problem[] =>
  value >= least && value <= most
    ? []
    : [{ field, message: message(), nearest: value > most ? most : least }];
