import type {
  AngleParameter,
  CountParameter,
  LengthParameter,
  RatioParameter,
} from '../../caps/parameter.ts';
import { inches, type Unit } from '../../units.ts';
import { type Press, withCommandKey } from '../with-command-key.ts';

/** What a track can be drawn for. */
export type Ranged = LengthParameter | AngleParameter | RatioParameter | CountParameter;

/** What one press of an arrow moves a parameter by, as a sewist would: 2 mm, or 1/8 in. In the parameter's own unit. */
export const stepOf = (parameter: Ranged, unit: Unit): number =>
  parameter.kind === 'length' && unit === 'in' ? inches(parameter.inchStep) : parameter.step;

/** A press of shift and an arrow moves by this part of a step. */
const FINE = 1 / 5;
/** A page up or down moves by this many. */
const PAGE = 5;

const directions: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowUp: 1,
  ArrowLeft: -1,
  ArrowDown: -1,
  PageUp: PAGE,
  PageDown: -PAGE,
};

/** Where a key takes the value, kept within the range; null for a key that moves nothing. */
export const stepped = (press: Press, value: number, parameter: Ranged, unit: Unit): number | null => {
  if (withCommandKey(press)) return null;
  if (press.key === 'Home') return parameter.min;
  if (press.key === 'End') return parameter.max;
  const direction = directions[press.key];
  if (direction === undefined) return null;
  const fine = press.shiftKey && parameter.kind !== 'count' ? FINE : 1;
  const step = stepOf(parameter, unit) * fine;
  return within(value + direction * step, parameter);
};

/** A dragged value comes to rest on what a ruler shows: 1 mm, or 1/16 in, or the parameter's own finer step. */
export const draggedTo = (value: number, parameter: Ranged, unit: Unit): number => {
  const grain =
    parameter.kind !== 'length'
      ? parameter.step
      : unit === 'cm'
        ? Math.min(1, parameter.step)
        : inches(Math.min(1 / 16, parameter.inchStep));
  // The ends of the track need not be on the ruler.
  if (value >= parameter.max) return parameter.max;
  if (value <= parameter.min) return parameter.min;
  // Rounding to a count of grains first keeps 0.1 + 0.2 out of the saved spec.
  return within(Math.round(value / grain) * grain, parameter);
};

const within = (value: number, { min, max }: Ranged): number => Math.min(max, Math.max(min, value));
