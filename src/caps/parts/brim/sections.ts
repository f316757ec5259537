import type { Span } from './brim-slope.ts';
import type { BrimValues } from './parameters.ts';

/** A piece of the ring: lying across the centre line, or one of a pair of which this is the wearer's right. */
export interface Section extends Span {
  /** What tells it from the ring's other pieces: part of its id and its name. */
  readonly end: '' | 'Front' | 'Back';
  readonly paired: boolean;
}

const whole: readonly Section[] = [{ end: '', from: 0, to: 1, paired: false }];
const sideHalves: readonly Section[] = [
  { end: 'Back', from: -1 / 4, to: 1 / 4, paired: false },
  { end: 'Front', from: 1 / 4, to: 3 / 4, paired: false },
];
const centreHalves: readonly Section[] = [{ end: '', from: 0, to: 1 / 2, paired: true }];
const thirds: readonly Section[] = [
  { end: 'Back', from: 0, to: 1 / 3, paired: true },
  { end: 'Front', from: 1 / 3, to: 2 / 3, paired: false },
];
const quarters: readonly Section[] = [
  { end: 'Back', from: 0, to: 1 / 4, paired: true },
  { end: 'Front', from: 1 / 4, to: 1 / 2, paired: true },
];

/** The ring's pieces, from the centre back to the centre front on the wearer's right. The other side mirrors it. */
export const brimSections = ({
  brimPieces,
  brimHalves,
}: Pick<BrimValues, 'brimPieces' | 'brimHalves'>): readonly Section[] => {
  switch (brimPieces) {
    case 'whole':
      return whole;
    case '2':
      return brimHalves === 'sides' ? sideHalves : centreHalves;
    case '3':
      return thirds;
    case '4':
      return quarters;
  }
};

/** Where the ring's pieces meet between the centre back and the centre front, in parts of the girth from the centre back. */
export const jointsAside = (values: Pick<BrimValues, 'brimPieces' | 'brimHalves'>): readonly number[] => {
  const onRight = brimSections(values)
    .map(({ to }) => to)
    .filter((at) => at < 1 / 2);
  return [...onRight, ...onRight.map((at) => 1 - at)];
};
