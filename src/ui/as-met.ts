import type { Spec } from '../design/spec.ts';
import { same } from './same.ts';

/** The specs met last, the latest first. */
const met: Spec[] = [];
const MOST = 4;

/** A spec that comes over from the page is a copy: its like that was met before stands for it, and what followed from that is known. */
export const asMet = (spec: Spec): Spec => {
  const known = met.find((other) => same(other, spec)) ?? spec;
  met.splice(0, met.length, known, ...met.filter((other) => other !== known).slice(0, MOST - 1));
  return known;
};
