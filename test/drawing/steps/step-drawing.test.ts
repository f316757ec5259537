import { beforeAll, describe, expect, test } from 'vitest';
import type { Mark } from '../../../src/drawing/drawing.ts';
import type { Picture } from '../../../src/drawing/steps/shown.ts';
import { STEP_WIDTH, stepDrawing } from '../../../src/drawing/steps/step-drawing.ts';
import { together } from '../../../src/drawing/steps/together.ts';
import { areaOf } from '../../../src/geometry/area.ts';
import { boundsOf } from '../../../src/geometry/bounds.ts';
import { flatten } from '../../../src/geometry/flatten.ts';
import { contains } from '../../../src/geometry/inside.ts';
import { pathLength, pointAt, tangentAt } from '../../../src/geometry/measure.ts';
import { type Path, polyline } from '../../../src/geometry/path.ts';
import { point } from '../../../src/geometry/point.ts';
import { translated } from '../../../src/geometry/transform.ts';
import { joinedIn } from '../../../src/guide/joined.ts';
import type { Step } from '../../../src/guide/step.ts';
import { say } from '../../../src/words.ts';
import { everyCap, head, type Written } from '../../guide/caps.ts';

let caps: readonly Written[] = [];
let drawn: readonly { readonly name: string; readonly step: Step; readonly picture: Picture | null }[] = [];
beforeAll(async () => {
  const all = await everyCap();
  const first = all.filter(({ style }, i) => all.findIndex((cap) => cap.style === style) === i);
  // Each style as it is usually made, and some of the others.
  caps = [...first, ...all.filter((cap, i) => !first.includes(cap) && i % 17 === 0)];
  drawn = caps.flatMap((cap) => drawingsOf(cap).map((one) => ({ ...one, name: cap.name })));
}, 60_000);

const captionOf = (picture: Picture): string =>
  picture.marks.flatMap((mark) => (mark.kind === 'text' ? mark.lines : [])).join(' ');

const drawingsOf = (cap: Written): readonly { readonly step: Step; readonly picture: Picture | null }[] => {
  const { guide, draft, style, values } = cap;
  const joined = joinedIn(guide.steps, draft.pattern.seams);
  const form = style.form(values, head);
  return guide.steps.map((step, i) => ({
    step,
    picture: stepDrawing(
      {
        ...step,
        press: step.settings.press ?? null,
        topstitched: step.settings.topstitch !== undefined,
        rows: [...step.rows, ...step.held],
        ...joined[i]!,
        form,
      },
      draft.pattern,
    ),
  }));
};

const lines = (marks: readonly Mark[]) => marks.flatMap((mark) => (mark.kind === 'line' ? [mark] : []));

describe('the drawing of a step', () => {
  test('is there for every step of every style, inside its box, with nothing that is not a number', () => {
    const wrong: string[] = [];
    for (const { name, step, picture } of drawn) {
      const boxes = lines(picture?.marks ?? []).map(({ path }) => boundsOf(path));
      // Heavy lines and arrowheads may reach a little over the edge.
      const inside = boxes.every(
        ({ min, max }) =>
          min.x >= -2.5 && min.y >= -2.5 && max.x <= STEP_WIDTH + 2.5 && max.y <= picture!.height + 2.5,
      );
      if (!inside || boxes.length === 0) wrong.push(`${name}, ${step.id}`);
    }
    expect(wrong).toEqual([]);
  });

  test('marks the seam that is sewn', () => {
    const without = drawn.filter(
      ({ step, picture }) =>
        step.show === 'together' && !lines(picture?.marks ?? []).some(({ role }) => role === 'sew'),
    );
    expect(without.map(({ name, step }) => `${name}, ${step.id}`)).toEqual([]);
  });

  test('shows what stands of the cap grow from step to step', () => {
    for (const cap of caps.filter(({ name }) => name.endsWith('{}'))) {
      const joined = joinedIn(cap.guide.steps, cap.draft.pattern.seams);
      const counts = joined.map((one) => one.joined.length);
      expect(counts).toEqual([...counts].sort((a, b) => a - b));
      const all = new Set(
        cap.draft.pattern.seams.flatMap(({ a, b }) => [...a, ...b].map((u) => `${u.piece} ${u.copy}`)),
      );
      expect(counts.at(-1), cap.name).toBe(all.size);
    }
  });
});

/** A path in short lines, so that it has points everywhere. */
const fine = (path: Path): Path => {
  const length = pathLength(path);
  const count = Math.ceil(length / 0.4);
  return polyline(Array.from({ length: count + 1 }, (_, i) => pointAt(path, (i * length) / count)));
};

describe('two pieces laid together', () => {
  const seamLength = (picture: Picture): number =>
    lines(picture.marks)
      .filter(({ role }) => role === 'sew')
      .reduce((sum, { path }) => sum + pathLength(path), 0);

  test('show the whole seam, to scale, where it has room', () => {
    for (const cap of caps.filter(({ style, name }) => style.id === 'flat-top' && name.endsWith('{}'))) {
      const { pattern } = cap.draft;
      const seam = pattern.seams.find(({ id }) => id === 'side1')!;
      const room = { width: 400, height: 400 };
      const picture = together(seam, pattern.pieces, pattern.allowances, room);
      const report = cap.work.seams.find(({ seam: { id } }) => id === 'side1')!;
      // No piece is drawn larger than three fifths.
      expect(seamLength(picture)).toBeCloseTo(report.a * 0.6, 3);
    }
  });

  test('lie edge on edge: level where they meet, the allowance of both below it, both pieces above', () => {
    const wrong: string[] = [];
    for (const cap of caps.filter(({ name }) => name.endsWith('{}'))) {
      const { pattern } = cap.draft;
      for (const { seam } of cap.work.seams) {
        const { marks } = together(seam, pattern.pieces, pattern.allowances, { width: 600, height: 600 });
        const sewn = lines(marks).find(({ role }) => role === 'sew')!.path;
        const half = pathLength(sewn) / 2;
        const [at, along] = [pointAt(sewn, half), tangentAt(sewn, half)];
        // The piece below peeks out by 1.5 mm to the left and up.
        const [below, above] = lines(marks)
          .filter(({ ground }) => ground)
          .map(({ path }, i) => translated(path, i === 0 ? point(1.5, -1.5) : point(0, 0)));
        const deepest = (path: Path): number =>
          Math.min(
            ...flatten(path, 0.01)
              .filter(({ x }) => Math.abs(x - at.x) < 0.5)
              .map(({ y }) => y),
          );
        const k = 0.6;
        const feet = [below!, above!].map((path) => at.y - deepest(fine(path)));
        const widths = pattern.allowances[seam.kind];
        const level = Math.abs(along.y) < 1e-3;
        const allowed = feet.every((foot) => foot > -0.05 && foot < k * widths + 0.3);
        // Both pieces are above the seam there, and end below it with their allowance.
        const lies = [below!, above!].every(
          (path) =>
            contains(path, point(at.x, at.y + 1)) && !contains(path, point(at.x, at.y - k * widths - 0.5)),
        );
        // What lies face down is its own mirror image, whose outline runs the other way.
        const mirrored = seam.a
          .concat(seam.b)
          .some(({ piece }) =>
            pattern.pieces.find(({ id }) => id === piece)!.cuts.some((cut) => (cut.mirrored ?? 0) > 0),
          );
        const faces = mirrored || (areaOf(below!) > 0 && areaOf(above!) < 0);
        if (!level || !allowed || !lies || !faces) wrong.push(`${cap.name}, ${seam.id}: ${feet}`);
      }
    }
    expect(wrong).toEqual([]);
  }, 30_000);
});

test('a lining goes in wrong sides together, and its drawing says so', () => {
  const put = drawn.filter(({ step }) => step.title === 'Put the lining in');
  expect(put.length).toBeGreaterThan(3);
  for (const { picture } of put) {
    expect(captionOf(picture!)).toMatch(/On top, face up: .*Below, face down: /);
  }
});

test('what the words lay or slip on something lies on top in the drawing', () => {
  let compared = 0;
  for (const { name, step, picture } of drawn.filter(({ step: { show } }) => show === 'together')) {
    const text = step.words.map((sentence) => say(sentence, 'cm')).join(' ');
    const [, moved] =
      /\b(?:Lay|Slip) the ([a-z ]+?) (?:on|over) the /.exec(text) ??
      /Sew with the ([a-z ]+?) on top/.exec(text) ??
      [];
    const [, top] = /On top, face down: ([a-z, ]+)\./.exec(captionOf(picture!)) ?? [];
    if (moved === undefined || top === undefined) continue;
    compared++;
    // A binding is that of the opening, a visor the upper one, a band or a side one of two.
    expect(top, `${name}, ${step.id}: ${moved}`).toMatch(new RegExp(moved));
  }
  expect(compared).toBeGreaterThan(50);
});
