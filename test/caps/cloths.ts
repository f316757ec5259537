import type { Values } from '../../src/caps/parameter.ts';
import type { Head, Style } from '../../src/caps/style.ts';
import type { Cloths } from '../../src/cloth/cloth.ts';
import { turnOfCloth } from '../../src/cloth/turn-of-cloth.ts';
import { defaultSpec } from '../../src/design/default-spec.ts';
import type { Cloth } from '../../src/pattern/piece.ts';

/** Cloths of some thicknesses, mm, and otherwise plain. */
export const clothsOf = (thickness: Readonly<Record<Cloth, number>>): Cloths => {
  const { outer, lining, interlining, stiffener } = defaultSpec.cloths;
  return {
    outer: { ...outer, thickness: thickness.outer },
    lining: { ...lining, thickness: thickness.lining },
    interlining: { ...interlining, thickness: thickness.interlining },
    stiffener: { ...stiffener, thickness: thickness.stiffener },
  };
};

/** Cloth that does not count: the plain rules of thumb. */
export const PLAIN = clothsOf({ outer: 0, lining: 0, interlining: 0, stiffener: 0 });
/** Wide corduroy, satin, a fusible: a lined cap's shell goes about 8 mm further round, its lining 0.6 mm (thicknesses from memory). */
export const CORDUROY = clothsOf({ outer: 1.5, lining: 0.2, interlining: 0.3, stiffener: 1.8 });
/** A winter cap: melton, a quilted lining, buckram. */
export const WINTER = clothsOf({ outer: 2, lining: 1, interlining: 0.7, stiffener: 1.8 });

/** The head with what these cloths add to its girths in a cap of some style and values. */
export const headIn = (cloths: Cloths, head: Head, style: Style, values: Values): Head => ({
  ...head,
  turn: turnOfCloth(cloths, style.inside(values)),
});
