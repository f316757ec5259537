import type { Values } from '../caps/parameter.ts';
import type { StyleId } from '../caps/registry.ts';
import type { Cloths } from '../cloth/cloth.ts';
import type { PaperSpec } from '../print/paper.ts';
import type { Unit } from '../units.ts';

/** What was found when a cap was tried on, and what was changed for it. */
export interface FitNote {
  /** As 2026-11-25. */
  readonly date: string;
  readonly style: string;
  /** What the wearer found, in words. */
  readonly found: readonly string[];
  /** By the names of the parameter tables: the value before and after. */
  readonly changed: Readonly<Record<string, readonly [number, number]>>;
}

/** One measured head, mm. Up to three readings of the girth are averaged. */
export interface HeadSpec {
  readonly name: string;
  readonly readings: readonly number[];
  readonly length: number | null;
  readonly breadth: number | null;
  readonly arc: number | null;
  /** Its fittings, the latest last. */
  readonly fittings?: readonly FitNote[];
}

export interface CapSpec {
  readonly style: StyleId;
  readonly name: string;
  /** What was wished, by the names of the parameter tables: also of other styles, for the way back. */
  readonly values: Values;
}

/** Everything the user chose, and nothing that can be computed: what is saved. */
export interface Spec {
  readonly head: HeadSpec;
  readonly cap: CapSpec;
  readonly cloths: Cloths;
  readonly paper: PaperSpec;
  readonly unit: Unit;
}
