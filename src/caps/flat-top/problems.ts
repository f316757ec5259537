import { ovalOfGirth } from '../../geometry/oval.ts';
import type { Problem } from '../../pattern/problem.ts';
import { mm, ratio, words } from '../../words.ts';
import { type Opening, openingOf } from '../opening.ts';
import { liningGirth } from '../parts/girth-figures.ts';
import { pleatCount } from '../parts/side-band/parameters.ts';
import { dropOf, sideSlope } from '../parts/side-band/side-slope.ts';
import { strapProblems } from '../parts/strap/problems.ts';
import { visorProblems } from '../parts/visor/problems.ts';
import type { Head } from '../style.ts';
import { checkValues, fieldOf } from '../validate.ts';
import { type FlatTopValues, flatTopParameters } from './parameters.ts';

/** What of a wished flat-top cap cannot be sewn, each with the nearest value that can. */
export const flatTopProblems = (values: FlatTopValues, head: Head): readonly Problem[] => {
  const outOfRange = checkValues(flatTopParameters, values);
  if (outOfRange.length > 0) return outOfRange;
  return [...crownProblems(values, head), ...visorProblems(values, head), ...strapProblems(values)];
};

/** What cannot be of the crown: the first of these, since each takes the ones before it for right. */
const crownProblems = (values: FlatTopValues, head: Head): readonly Problem[] => {
  for (const check of [crownTooFull, gatheredTooMuch, pleatsTooSmall, tiltedTooMuch]) {
    const found = check(values, openingOf(head, values.ease));
    if (found.length > 0) return found;
  }
  return [];
};

/**
 * At a fullness of 2π × height the side band lies flat and the crown has no height left. The lining, smaller both
 * round and in height, reaches that point first.
 */
const crownTooFull = ({
  crownFullness,
  sideBandHeight,
  lining,
  liningTake,
}: FlatTopValues): readonly Problem[] => {
  const take = lining ? liningTake : 0;
  const limit = Math.min(2 * Math.PI * sideBandHeight, 2 * Math.PI * (sideBandHeight - take) + take);
  if (crownFullness < limit) return [];
  return [
    {
      field: fieldOf('crownFullness'),
      message: words`A side band ${mm(sideBandHeight)} high cannot reach out that far: it would lie flat at ${mm(limit)}. Less fullness, or a higher side band.`,
      nearest: below(limit, 5),
    },
  ];
};

/** A lower edge longer than the rim by 2π × height lies flat too, turned inside out. */
const gatheredTooMuch = (
  { crownFullness, sideBandHeight, crownGather }: FlatTopValues,
  { shell: opening }: Opening,
): readonly Problem[] => {
  const limit = (crownFullness + 2 * Math.PI * sideBandHeight) / opening;
  if (crownGather < limit) return [];
  return [
    {
      field: fieldOf('crownGather'),
      message: words`A side band ${mm(sideBandHeight)} high would lie flat below this top with ${ratio(limit)} gathered in. Less of it, a fuller crown, or a higher side band.`,
      nearest: below(limit, 0.05),
    },
  ];
};

/** A pleat that takes up less than this (mm) cannot be folded and pressed (our own measure). */
const LEAST_PLEAT = 6;

const pleatsTooSmall = (values: FlatTopValues, { shell: opening }: Opening): readonly Problem[] => {
  const count = pleatCount(values);
  const inQuarter = (opening * values.crownGather) / 4;
  if (count === 0 || inQuarter / count >= LEAST_PLEAT) return [];
  const fewer = Math.floor(inQuarter / LEAST_PLEAT);
  if (fewer >= 1) {
    return [
      {
        field: fieldOf('pleats'),
        message: words`Each pleat would take up only ${mm(inQuarter / count)}; ${mm(LEAST_PLEAT)} is the least that can be folded.`,
        nearest: fewer,
      },
    ];
  }
  return [
    {
      field: fieldOf('crownGather'),
      message: words`Even one pleat in each quarter would take up only ${mm(inQuarter)}; ${mm(LEAST_PLEAT)} is the least that can be folded.`,
      nearest: Math.ceil((4 * LEAST_PLEAT * 100) / opening) / 100,
    },
  ];
};

/** The least that the top stands above the band at the back, mm: room for both seams (our own measure). */
const LEAST_BACK = 12;

const tiltedTooMuch = (values: FlatTopValues, opening: Opening): readonly Problem[] => {
  const { crownTilt } = values;
  if (crownTilt === 0 || standsBehind(values, opening, crownTilt)) return [];
  let nearest = Math.ceil(crownTilt / 2 - 1) * 2;
  while (nearest > 0 && !standsBehind(values, opening, nearest)) nearest -= 2;
  return [
    {
      field: fieldOf('crownTilt'),
      message: words`The back would have no height left: the top must stand at least ${mm(LEAST_BACK)} above the band there. Less tilt, or a higher side band.`,
      nearest: Math.max(0, nearest),
    },
  ];
};

/** Whether shell and lining have height at the back when they are tilted so. */
const standsBehind = (values: FlatTopValues, opening: Opening, tilt: number): boolean => {
  const { crownFullness, sideBandHeight, crownGather, tipRatio, lining, liningTake } = values;
  const stands = (rimGirth: number, lower: number, height: number) => {
    const slope = sideSlope(ovalOfGirth(rimGirth, tipRatio), lower, height, tilt);
    return dropOf(slope) - tilt / 2 >= LEAST_BACK;
  };
  const rim = opening.shell + crownFullness;
  const inside = liningGirth(opening, '', rim, liningTake).girth;
  return (
    stands(rim, opening.shell, sideBandHeight) &&
    (crownGather === 0 || stands(rim, opening.shell * (1 + crownGather), sideBandHeight)) &&
    (!lining || stands(inside, opening.lining, sideBandHeight - liningTake))
  );
};

/** The greatest whole step below a limit. */
const below = (limit: number, step: number): number => Math.max(0, Math.ceil(limit / step - 1) * step);
