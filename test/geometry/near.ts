import { expect } from 'vitest';
import { distance, type Point } from '../../src/geometry/point.ts';

/** Fails unless two numbers differ by less than a tolerance; NaN always fails. */
export const expectNear = (actual: number, expected: number, within: number): void => {
  expect(Math.abs(actual - expected), `${actual} is not ${expected}`).toBeLessThan(within);
};

/** Fails unless two points are closer than a tolerance, mm. */
export const expectSamePoint = (actual: Point, expected: Point, within = 1e-9): void => {
  const told = `(${actual.x}, ${actual.y}) is not (${expected.x}, ${expected.y})`;
  expect(distance(actual, expected), told).toBeLessThan(within);
};
