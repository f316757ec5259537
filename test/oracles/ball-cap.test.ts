import { describe, expect, test } from 'vitest';
import { ball } from '../../src/caps/ball/ball.ts';
import { ballParameters } from '../../src/caps/ball/parameters.ts';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { pathLength, tangentAt } from '../../src/geometry/measure.ts';
import { checkSeams } from '../../src/pattern/seam-check.ts';
import { expectNear } from '../geometry/near.ts';

/**
 * Common practice, from the guide of a maker of such caps: a factory-made cap of six panels goes about 59 cm round with an
 * adjuster of 3 to 4 cm; a panel is about 10 cm wide and 15 cm along the side. Such figures are rounded: within 5 %.
 */
const ROUND = 590;
const ADJUSTER = [30, 40] as const;
const PANEL = { wide: 100, side: 150 };
const within5 = (actual: number, published: number) => expectNear(actual / published, 1, 0.05);

const defaults = defaultsOf(ballParameters);
/** The head that such a cap, drawn in by its adjuster, is made for. */
const HEAD = { girth: 550, ratio: 0.8, arc: 0.5625 * 550 };
const draft = ball.draft(defaults, HEAD);
const edgeOf = (id: string, edge: string) =>
  draft.pattern.pieces.find((p) => p.id === id)!.outline.find((e) => e.name === edge)!.path;
const GORES = ['goreFront', 'goreSide', 'goreBack'];

describe('a ball cap as it comes, beside a factory-made one', () => {
  test('goes about 59 cm round, let out', () => {
    const crown = GORES.reduce((sum, id) => sum + 2 * pathLength(edgeOf(id, 'bottom')), 0);
    within5(crown + defaults.openingWidth, ROUND);
  });

  test('is drawn in by as much as an adjuster takes', () => {
    const crown = GORES.reduce((sum, id) => sum + 2 * pathLength(edgeOf(id, 'bottom')), 0);
    const lower = checkSeams(draft.pattern).find(({ seam }) => seam.id === 'lowerEdge')!;
    const drawn = crown + defaults.openingWidth - lower.a;
    expect(drawn).toBeGreaterThanOrEqual(ADJUSTER[0] - 1e-6);
    expect(drawn).toBeLessThanOrEqual(ADJUSTER[1]);
  });

  test('has panels about 10 cm wide, and 15 cm along the side', () => {
    for (const id of ['goreFront', 'goreSide']) {
      within5(pathLength(edgeOf(id, 'bottom')), PANEL.wide);
      for (const edge of ['right', 'left']) within5(pathLength(edgeOf(id, edge)), PANEL.side);
    }
    within5(pathLength(edgeOf('goreBack', 'bottom')) + defaults.openingWidth / 2, PANEL.wide);
    within5(pathLength(edgeOf('goreBack', 'right')), PANEL.side);
  });

  test('has whole panels that add up to the girth with its room: a rule to be run on every draft', () => {
    const panel = pathLength(edgeOf('goreSide', 'bottom'));
    expectNear(6 * panel, HEAD.girth + defaults.ease + defaults.backRoom, 1e-6);
  });

  test('lets 20 to 40 mm of room, and 6 to 13 mm of ease, be usual: common practice for caps with an adjuster', () => {
    expect(ballParameters.backRoom.usual).toEqual([20, 40]);
    expect(defaults.backRoom).toBeGreaterThanOrEqual(20);
    expect(defaults.backRoom).toBeLessThanOrEqual(40);
    expect(defaults.ease).toBeGreaterThanOrEqual(6);
    expect(defaults.ease).toBeLessThanOrEqual(13);
  });

  test('has a seam at the centre front, and long seams square to the edge: common practice for six gores', () => {
    const front = edgeOf('goreFront', 'right');
    const over = draft.pattern.seams.find(({ id }) => id === 'over')!;
    expect([over.a[0], over.b[0]]).toEqual([
      { piece: 'goreFront', copy: 0, edge: 'right' },
      { piece: 'goreFront', copy: 1, edge: 'right' },
    ]);
    expectNear(tangentAt(front, 0).x, 0, 1e-9);
  });
});
