import { notchesToMeet, type Side } from '../../../pattern/chain.ts';
import type { Notch } from '../../../pattern/piece.ts';

/**
 * The notches of a band's upper edge that meet the crown above it, along that edge as its outline runs, from the end that
 * meets the wearer's left half.
 */
export const topNotchesFor = (crown: Side): readonly Omit<Notch, 'edge'>[] =>
  notchesToMeet('top', crown).map(({ at, count, name }) => ({
    at: crown.length - at,
    count,
    name: Math.abs(at - crown.length / 2) < 1 ? 'centre front' : name,
  }));
