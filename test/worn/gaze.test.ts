import { describe, expect, test } from 'vitest';
import { dot3, point3 } from '../../src/geometry/space.ts';
import { axesOf, threeQuarter, views } from '../../src/worn/gaze.ts';

/** A corner of the wearer's own: to the right, in front, above. */
const [RIGHT, FRONT, ABOVE] = [point3(1, 0, 0), point3(0, 1, 0), point3(0, 0, 1)];

describe('the four views', () => {
  test('show the wearer as others see them: from the front the right hand is on the left', () => {
    const front = axesOf(views.front);
    expect(dot3(front.right, RIGHT)).toBeCloseTo(-1, 12);
    expect(dot3(front.up, ABOVE)).toBeCloseTo(1, 12);
    expect(dot3(front.eye, FRONT)).toBeCloseTo(1, 12);
    const back = axesOf(views.back);
    expect(dot3(back.right, RIGHT)).toBeCloseTo(1, 12);
  });

  test('show the wearer’s left side, looking to the left', () => {
    const side = axesOf(views.side);
    expect(dot3(side.eye, RIGHT)).toBeCloseTo(-1, 12);
    expect(dot3(side.right, FRONT)).toBeCloseTo(-1, 12);
  });

  test('show the top with the front below, as the view from the front folded down', () => {
    const top = axesOf(views.top);
    expect(dot3(top.eye, ABOVE)).toBeCloseTo(1, 12);
    expect(dot3(top.up, FRONT)).toBeCloseTo(-1, 12);
  });

  test('have axes of length one and square to each other, from anywhere', () => {
    for (const gaze of [...Object.values(views), threeQuarter, { aside: 2.1, above: -0.4 }]) {
      const { right, up, eye } = axesOf(gaze);
      for (const axis of [right, up, eye]) expect(dot3(axis, axis)).toBeCloseTo(1, 12);
      expect(dot3(right, up)).toBeCloseTo(0, 12);
      expect(dot3(up, eye)).toBeCloseTo(0, 12);
      expect(dot3(eye, right)).toBeCloseTo(0, 12);
    }
  });
});
