import { calledName } from '../design/called-name.ts';
import type { Draft } from '../design/draft.ts';
import type { Heading } from '../print/sheet.ts';
import type { Unit } from '../units.ts';

/** What printed pages say of a cap; `date` as 2026-11-25. */
export const headingOf = ({ spec, finishedGirth }: Draft, unit: Unit, date: string): Heading => ({
  cap: calledName(spec.cap.name),
  wearer: spec.head.name.trim(),
  finishedGirth,
  date,
  unit,
});
