import { describe, expect, test } from 'vitest';
import { ball } from '../../src/caps/ball/ball.ts';
import { type BallValues, ballParameters } from '../../src/caps/ball/parameters.ts';
import { coaxingOf } from '../../src/caps/coaxing.ts';
import { defaultsOf } from '../../src/caps/parameter.ts';
import { goreShape } from '../../src/caps/parts/gore/gore.ts';
import { goreReach } from '../../src/caps/parts/gore/gore-reach.ts';
import { curveAt } from '../../src/geometry/curve.ts';
import { contains } from '../../src/geometry/inside.ts';
import { pathLength, pointAt, tangentAt } from '../../src/geometry/measure.ts';
import { pathEnd } from '../../src/geometry/path.ts';
import { cross, distance, dot, type Point, point, scale } from '../../src/geometry/point.ts';
import { checkSeams } from '../../src/pattern/seam-check.ts';
import { expectNear } from '../geometry/near.ts';
import { describeFamily, HEADS, outlineOf } from './family.ts';
import { timesSewn } from './times-sewn.ts';

const defaults = defaultsOf(ballParameters);
const HEAD = HEADS[3]!;

// Refused only: gores too short to reach the middle, an opening too high or too narrow for what is wished of its strap, a visor longer than
// half of every head.
describeFamily(ball, {
  mostRefused: 58,
  also: [{}, { backFastening: 'elastic' }],
});

const draftOf = (values: Partial<BallValues> = {}) => ball.draft({ ...defaults, ...values }, HEAD);
const pieceOf = (id: string, values: Partial<BallValues> = {}) =>
  draftOf(values).pattern.pieces.find((p) => p.id === id)!;
const edgeOf = (id: string, edge: string, values: Partial<BallValues> = {}) =>
  pieceOf(id, values).outline.find((e) => e.name === edge)!.path;
const GORES = ['goreFront', 'goreSide', 'goreBack'];

describe('a ball cap', () => {
  test('has the pieces of the trade: six gores of which the front pair is stiffened too', () => {
    const { pieces } = draftOf().pattern;
    expect(pieces.map((p) => p.name)).toEqual([
      'Front gore',
      'Side gore',
      'Back gore',
      'Opening binding',
      'Button cover',
      'Visor',
      'Visor stiffener',
      'Back strap half',
      'Sweatband',
    ]);
    const gores = pieces.filter(({ id }) => GORES.includes(id));
    expect(gores.reduce((sum, { cuts }) => sum + cuts[0]!.count, 0)).toBe(6);
    expect(gores.map(({ cuts }) => cuts.map(({ cloth }) => cloth))).toEqual([
      ['outer', 'interlining'],
      ['outer'],
      ['outer'],
    ]);
    for (const cut of gores.flatMap(({ cuts }) => cuts)) expect(cut).toMatchObject({ count: 2, mirrored: 1 });
  });

  test('has its finished girth as the strap closes it, whatever room there is to let it out', () => {
    for (const backRoom of [0, 12, 30]) {
      const draft = draftOf({ backRoom });
      const lower = checkSeams(draft.pattern).find(({ seam }) => seam.id === 'lowerEdge')!;
      expectNear(lower.a, HEAD.girth + defaults.ease, 1e-6);
      // Cut, the crown goes round the finished girth and the room, less what the arch takes.
      const crown = GORES.reduce((sum, id) => sum + 2 * pathLength(edgeOf(id, 'bottom', { backRoom })), 0);
      expectNear(crown, HEAD.girth + defaults.ease + backRoom - defaults.openingWidth, 1e-6);
    }
  });

  test('sews every edge of every copy once, and more often only along the lower edge and the strap', () => {
    const free = ['topButton edge', 'stiffener outer', 'stiffener inner', 'backStrap left'];
    const bound = ['archBinding left', 'archBinding right', 'archBinding top'];
    const turned = ['sweatband left', 'sweatband right', 'sweatband top'];
    for (const { piece, copy, edge, times } of timesSewn(draftOf().pattern)) {
      const name = `${piece} ${edge}`;
      // The two covers of a visor share one seam line, sewn as one.
      if (name === 'visor inner' && copy === 1) continue;
      if ([...free, ...bound, ...turned].includes(name)) expect(times, name).toBe(0);
      else if (edge === 'bottom' || name === 'backStrap top') expect(times, name).toBeGreaterThan(1 - 1e-6);
      else expect(times, name).toBeCloseTo(1, 6);
    }
  });

  test('has a sweatband from one end of the opening to the other, with a notch for every seam of the crown', () => {
    const crown = GORES.reduce((sum, id) => sum + 2 * pathLength(edgeOf(id, 'bottom')), 0);
    const { outline, notches } = pieceOf('sweatband');
    expectNear(pathLength(outline[0]!.path), crown, 1e-6);
    expect(notches.filter(({ name }) => name === 'seam')).toHaveLength(5);
    expect(notches.filter(({ name }) => name === 'side')).toHaveLength(2);
  });

  test('marks an eyelet in every gore, two thirds of the way up its middle, and none if none is wished', () => {
    for (const id of GORES) {
      const piece = pieceOf(id);
      const [eyelet, ...others] = piece.marks.filter(({ kind }) => kind === 'eyelet');
      expect(others).toEqual([]);
      if (eyelet?.kind !== 'eyelet') throw new Error(`${id} has no eyelet`);
      expectNear(eyelet.at.x, 0, 1e-9);
      expectNear(eyelet.at.y / pathEnd(edgeOf(id, 'right')).y, 2 / 3, 1e-9);
      expect(contains(outlineOf(piece), eyelet.at)).toBe(true);
      expect(pieceOf(id, { eyelets: false }).marks.filter(({ kind }) => kind === 'eyelet')).toEqual([]);
    }
  });

  test('marks the ends of the visor on the gore where they fall', () => {
    for (const visorLength of [150, 186, 260]) {
      const { pattern } = draftOf({ visorLength });
      const half = pathLength(pattern.pieces.find(({ id }) => id === 'visor')!.outline[1]!.path) / 2;
      const base = pathLength(edgeOf('goreSide', 'bottom', { visorLength }));
      const ends = pattern.pieces.flatMap(({ id, notches }) =>
        notches.filter(({ name }) => name === 'visor end').map(({ at }) => ({ id, at })),
      );
      const fromSeam = half < base ? base - half : 2 * base - half;
      expect(ends.map(({ id }) => id)).toEqual([
        half < base ? 'goreFront' : 'goreSide',
        'sweatband',
        'sweatband',
      ]);
      expectNear(ends[0]!.at, fromSeam, 1e-6);
    }
  });
});

/** The angle between the two long edges of a gore at its tip, radians. */
const tipAngle = (id: string, values: Partial<BallValues>): number => {
  const [right, left] = [edgeOf(id, 'right', values), edgeOf(id, 'left', values)];
  const [a, b] = [scale(tangentAt(right, pathLength(right)), -1), tangentAt(left, 0)];
  return Math.atan2(cross(b, a) * -1, dot(a, b));
};

describe('the crown of a ball cap', () => {
  test('lies flat in the middle however steep its front: the six tips make a full turn', () => {
    for (const frontSteepness of [0, 0.1, 0.2, 0.35]) {
      const all = GORES.reduce((sum, id) => sum + 2 * Math.abs(tipAngle(id, { frontSteepness })), 0);
      expectNear(all, 2 * Math.PI, 0.01);
    }
  });

  test('meets its edge square with every long seam, so that the edge does not scallop', () => {
    for (const id of ['goreFront', 'goreSide']) {
      expectNear(tangentAt(edgeOf(id, 'right'), 0).x, 0, 1e-9);
      expectNear(tangentAt(edgeOf(id, 'left'), Number.MAX_VALUE).x, 0, 1e-9);
    }
  });

  test('is the close crown of six equal gores where its front is no steeper than the rest', () => {
    const exact = goreShape(
      goreReach({
        gores: 6,
        girth: HEAD.girth + defaults.ease + defaults.backRoom,
        length: HEAD.arc / 2 + defaults.crownRoom,
        fullness: 0,
        widest: defaults.goreWidest,
      }),
      6,
    );
    for (const id of ['goreFront', 'goreSide']) {
      const { outline } = pieceOf(id, { frontSteepness: 0 });
      for (const edge of ['right', 'left'] as const) {
        const path = outline.find(({ name }) => name === edge)!.path;
        expectNear(pathLength(path), pathLength(exact[edge]), 0.01);
        for (let at = 0; at <= 1; at += 0.05) {
          const along = pathLength(path) * at;
          expectNear(distance(pointAt(path, along), pointAt(exact[edge], along)), 0, 0.02);
        }
      }
    }
  });

  test('stands farther out in front than behind all the way up, by the steepness wished near the top', () => {
    for (const frontSteepness of [0, 0.2, 0.35]) {
      const { strips } = ball.form({ ...defaults, frontSteepness }, HEAD);
      const [, side, front] = strips.map(({ strip }) => strip);
      // From the axis to the flat of the hexagon: a corner at the centre front, and along the back gore's own direction.
      const ahead = front!.right.map(({ y }) => y * Math.cos(Math.PI / 6));
      const behind = side!.left.map(({ x, y }) => (x - y * Math.sqrt(3)) / 2);
      const ratios = ahead.slice(0, -1).map((reach, i) => reach / behind[i]!);
      for (const [i, ratio] of ratios.entries())
        expect(ratio).toBeGreaterThanOrEqual((ratios[i - 1] ?? 1) - 1e-9);
      expectNear(ratios[0]!, 1, 1e-9);
      expectNear(ratios.at(-1)!, 1 + frontSteepness, 0.002);
    }
  });

  test('rolls flat without coaxing: every gore is a part of a cylinder with level rulings', () => {
    for (const frontSteepness of [0, 0.2, 0.35]) {
      const form = ball.form({ ...defaults, frontSteepness }, HEAD);
      for (const { piece, strip } of form.strips.filter((s) => GORES.includes(s.piece))) {
        for (const [i, { z }] of strip.left.entries()) expectNear(strip.right[i]!.z, z, 1e-9);
        expect(coaxingOf(form).find((c) => c.piece === piece)!.effort).toBe('none');
      }
    }
  });

  test('has seams that its gores share in space, point for point', () => {
    const { strips } = ball.form(defaults, HEAD);
    const [, side, front, frontLeft, sideLeft] = strips.map(({ strip }) => strip);
    expect(side!.right).toEqual(front!.left);
    expect(frontLeft!.right).toEqual(sideLeft!.left);
    for (const [i, p] of front!.right.entries()) {
      expectNear(p.x, 0, 1e-9);
      expectNear(frontLeft!.left[i]!.y, p.y, 1e-9);
    }
  });

  test('has edges within 0.02 mm of the true development, by fine steps through its own definition', () => {
    for (const frontSteepness of [0.1, 0.35]) {
      const values = { frontSteepness };
      const centreFront = fineEdge(frontSteepness, (_side, front) => front * Math.tan(Math.PI / 6), 1);
      const sideToFront = fineEdge(
        frontSteepness,
        (side, front) => (front - side / 2) / Math.sin(Math.PI / 3),
        0.5,
      );
      for (const [id, fine] of [
        ['goreFront', centreFront],
        ['goreSide', sideToFront],
      ] as const) {
        for (const curve of edgeOf(id, 'right', values)) {
          for (const t of [0, 0.2, 0.5, 0.8]) {
            const at = curveAt(curve, t);
            expectNear(Math.min(...fine.map((p) => distance(p, at))), 0, 0.02);
          }
        }
      }
    }
  });
});

/** Points every 0.02 mm or so along the right-hand edge of a gore, from the meridian of the back gores: an independent count. */
const fineEdge = (
  steepness: number,
  toSeam: (side: number, front: number) => number,
  share: number,
): readonly Point[] => {
  const girth = HEAD.girth + defaults.ease + defaults.backRoom;
  const length = HEAD.arc / 2 + defaults.crownRoom;
  const up = length * defaults.goreWidest;
  const reach = goreReach({ gores: 6, girth, length, fullness: 0, widest: defaults.goreWidest });
  const points: Point[] = [];
  let [way, last] = [0, { back: 0, y: 0, own: 0 }];
  for (const [k, curve] of reach.entries()) {
    for (let i = 0; i <= 9000; i++) {
      const { x: back, y } = curveAt(curve, i / 9000);
      const u = Math.max(0, (y - up) / (length - up));
      const out = steepness * (3 * u ** 2 - 2 * u ** 3);
      const own = back * (1 + out * share);
      if (k + i > 0) {
        const rise2 = (y - last.y) ** 2 - (back - last.back) ** 2;
        way += Math.sqrt(Math.max(0, rise2) + (own - last.own) ** 2);
      }
      last = { back, y, own };
      points.push(point(toSeam(back * (1 + out / 2), back * (1 + out)), way));
    }
  }
  return points;
};
