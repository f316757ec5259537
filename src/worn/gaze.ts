import { type Point3, point3 } from '../geometry/space.ts';

/** Where a cap is looked at from, far away. Radians. */
export interface Gaze {
  /** From the front towards the wearer's left: 0 the front, a quarter turn the left side, a half turn the back. */
  readonly aside: number;
  /** Above level; a quarter turn is from the top. */
  readonly above: number;
}

/** The views of a drawing: four from around, and one into the cap from below. */
export const views = {
  front: { aside: 0, above: 0 },
  side: { aside: Math.PI / 2, above: 0 },
  back: { aside: Math.PI, above: 0 },
  top: { aside: 0, above: Math.PI / 2 },
  inside: { aside: 0, above: -Math.PI / 2 },
} as const satisfies Readonly<Record<string, Gaze>>;

export type ViewName = keyof typeof views;

/** From farther below than this the head would hide what is in the cap: it is left out. */
const INTO = -0.7;

export const looksInto = ({ above }: Gaze): boolean => above < INTO;

/** How a cap is best shown in one picture. */
export const threeQuarter: Gaze = { aside: 0.62, above: 0.22 };

/** The directions of a picture in space: to the right of it, up it, and out of it towards the eye. */
export interface Axes {
  readonly right: Point3;
  readonly up: Point3;
  readonly eye: Point3;
}

export const axesOf = ({ aside, above }: Gaze): Axes => {
  const [sinA, cosA, sinB, cosB] = [Math.sin(aside), Math.cos(aside), Math.sin(above), Math.cos(above)];
  return {
    right: point3(-cosA, -sinA, 0),
    up: point3(sinA * sinB, -cosA * sinB, cosB),
    eye: point3(-sinA * cosB, cosA * cosB, sinB),
  };
};
