import type { Box } from '../geometry/box.ts';
import { type Point, point } from '../geometry/point.ts';
import { type Axes, axesOf, type Gaze, looksInto } from '../worn/gaze.ts';
import { headMesh } from '../worn/head-mesh.ts';
import { normalsOf } from '../worn/normals.ts';
import type { Worn } from '../worn/put-on.ts';
import { edgeKnots, type Sheet, trianglesIn } from '../worn/sheet.ts';
import { type DepthMap, depthMap, type Faces } from './depth-map.ts';
import { joinedLines } from './joined-lines.ts';

/** What a line of the drawing is: the outline or an edge of the cap, a seam or stitch line on it, a line of its shade, or the head. */
export type WornRole = 'edge' | 'shade' | 'head';

export interface WornLine {
  readonly role: WornRole;
  /** mm, y up. */
  readonly points: readonly Point[];
}

/** A cap on a head as a line drawing: only what is seen. */
export interface WornDrawing {
  readonly box: Box;
  readonly lines: readonly WornLine[];
}

/** Of the head no more is drawn than to this far below the tape, in parts of its half length. */
const NECK = 1.15;

/**
 * A cap on its head from one side, shaded by lines along its strips where they turn from the light. Lines that something else
 * covers are left out, to about half a millimetre. From below the head is left out, so that one looks into the cap.
 */
export const wornDrawing = ({ sheets, head }: Worn, gaze: Gaze): WornDrawing => {
  const axes = axesOf(gaze);
  const faces = sheets.map((sheet): Faces & { readonly sheet: Sheet } => ({
    sheet,
    seen: seenOf(sheet.at, axes),
    corners: trianglesIn(sheet),
  }));
  const form = headMesh(head);
  const bust: Faces = { seen: seenOf(form.position, axes), corners: form.index };
  const into = looksInto(gaze);
  const lined = sheets.some(({ lining }) => lining);
  const map = depthMap(into ? faces : [...faces, bust]);
  const low = -NECK * head.halfLength;
  const lines = [
    ...(into ? [] : turnings(bust.seen, seenOf(form.normal, axes), form.columns))
      .filter((pair) => pair.every(([k]) => form.position[3 * k + 2]! > low))
      .map((pair) => ({ role: 'head' as const, points: pair.map(([, p]) => p) })),
    ...faces.flatMap(({ sheet, seen }) => capLines(sheet, seen, axes, lined)),
  ].flatMap((line) => visible(line, map));
  const chained = joinedLines(lines);
  const xs = chained.flatMap(({ points }) => points.map(({ x }) => x));
  const ys = chained.flatMap(({ points }) => points.map(({ y }) => y));
  return {
    box: {
      min: point(least(xs), least(ys)),
      max: point(-least(xs.map((x) => -x)), -least(ys.map((y) => -y))),
    },
    lines: chained,
  };
};

const least = (all: readonly number[]): number => all.reduce((a, b) => Math.min(a, b), Infinity);

type Near = Point & { readonly near: number };

interface RawLine {
  readonly role: WornRole;
  readonly points: readonly Near[];
}

const seenOf = (at: ArrayLike<number>, { right, up, eye }: Axes): Float64Array => {
  const seen = new Float64Array(at.length);
  for (let k = 0; k < at.length; k += 3) {
    const [x, y, z] = [at[k]!, at[k + 1]!, at[k + 2]!];
    seen[k] = right.x * x + right.y * y + right.z * z;
    seen[k + 1] = up.x * x + up.y * y + up.z * z;
    seen[k + 2] = eye.x * x + eye.y * y + eye.z * z;
  }
  return seen;
};

const nearAt = (seen: Float64Array, k: number): Near => ({
  x: seen[3 * k]!,
  y: seen[3 * k + 1]!,
  near: seen[3 * k + 2]!,
});

/** What faces away by more than this is the other side of the cloth, of a shell and of a lining. */
const AWAY = { shell: -0.15, lining: -0.001 } as const;

/** The lines of a sheet; of a lining only those within, and of the shell of a lined cap only those outside. */
const capLines = (sheet: Sheet, seen: Float64Array, axes: Axes, lined: boolean): readonly RawLine[] => {
  const normals = seenOf(normalsOf(sheet), axes);
  if (sheet.lining) for (let k = 0; k < normals.length; k++) normals[k] = -normals[k]!;
  const oneSide = lined && !sheet.open;
  const away = sheet.lining ? AWAY.lining : AWAY.shell;
  let run: Near[] = [];
  const edges = [run];
  for (const k of outlineKnots(sheet)) {
    if (!oneSide || normals[3 * k + 2]! > away) run.push(nearAt(seen, k));
    else if (run.length > 0) {
      run = [];
      edges.push(run);
    }
  }
  const turned = turnings(seen, normals, sheet.columns, sheet.rows).map((pair) => pair.map(([, p]) => p));
  return [
    ...[...edges, ...turned].map((points): RawLine => ({ role: 'edge', points })),
    ...shades(sheet, seen, normals),
  ];
};

/** The knots of a net along its edges in their order; of a button or an eyelet its rim alone. */
const outlineKnots = (sheet: Sheet): readonly number[] => {
  const { rows, columns, disc } = sheet;
  if (disc) return Array.from({ length: rows }, (_, i) => (i + 1) * columns - 1);
  const knots = edgeKnots(sheet);
  return [...knots, knots[0]!];
};

/** Where a surface turns away from the eye, cell by cell of its net: short lines, each with a knot near its ends. */
const turnings = (
  seen: Float64Array,
  normals: Float64Array,
  columns: number,
  rows = seen.length / 3 / columns,
): readonly (readonly (readonly [number, Near])[])[] => {
  const found: (readonly (readonly [number, Near])[])[] = [];
  const facing = (k: number) => normals[3 * k + 2]!;
  for (let i = 0; i + 1 < rows; i++) {
    for (let j = 0; j + 1 < columns; j++) {
      const a = i * columns + j;
      const round = [a, a + 1, a + columns + 1, a + columns, a];
      const ends: (readonly [number, Near])[] = [];
      for (let n = 0; n < 4; n++) {
        const [p, q] = [round[n]!, round[n + 1]!];
        const [f, g] = [facing(p), facing(q)];
        if (f > 0 === g > 0) continue;
        const t = f / (f - g);
        const mix = (c: number) => seen[3 * p + c]! + (seen[3 * q + c]! - seen[3 * p + c]!) * t;
        ends.push([p, { x: mix(0), y: mix(1), near: mix(2) + TURNED }]);
      }
      if (ends.length === 2) found.push(ends);
    }
  }
  return found;
};

/** The outline of a round surface lies where its net is steepest: it is taken to be this much nearer, mm. */
const TURNED = 3;

/** The light comes from above on the left, a little from the eye. */
const LIGHT = { x: -0.45, y: 0.62, z: 0.64 } as const;
/** Darker than the first of these there is a line of shade in every place for one, darker than the second twice as many. */
const DARK = [0.42, 0.12] as const;
/** Places for lines of shade are so far apart, mm. */
const APART = 7;

/** Lines along the rulings where the cloth is in the shade. */
const shades = (sheet: Sheet, seen: Float64Array, normals: Float64Array): readonly RawLine[] => {
  const { rows, columns } = sheet;
  const dark = (k: number) =>
    Math.abs(normals[3 * k]! * LIGHT.x + normals[3 * k + 1]! * LIGHT.y + normals[3 * k + 2]! * LIGHT.z) *
    Math.sign(normals[3 * k + 2]!);
  const lines: RawLine[] = [];
  let [gone, count] = [APART / 2, 0];
  for (let i = 1; i < rows; i++) {
    const [a, b] = [i * columns + (columns >> 1), (i - 1) * columns + (columns >> 1)];
    gone += Math.hypot(
      sheet.at[3 * a]! - sheet.at[3 * b]!,
      sheet.at[3 * a + 1]! - sheet.at[3 * b + 1]!,
      sheet.at[3 * a + 2]! - sheet.at[3 * b + 2]!,
    );
    if (gone < APART / 2) continue;
    gone = 0;
    count++;
    const most = count % 2 === 0 ? DARK[0] : DARK[1];
    let run: Near[] = [];
    for (let j = 0; j < columns; j++) {
      const k = i * columns + j;
      if (normals[3 * k + 2]! > 0 && dark(k) < most) run.push(nearAt(seen, k));
      else {
        if (run.length > 1) lines.push({ role: 'shade', points: run });
        run = [];
      }
    }
    if (run.length > 1) lines.push({ role: 'shade', points: run });
  }
  return lines;
};

/** The longest step at which a line is asked whether it is seen, mm. */
const ASKED = 1.5;

const visible = ({ role, points }: RawLine, map: DepthMap): readonly WornLine[] => {
  const lines: WornLine[] = [];
  let run: Point[] = [];
  const end = () => {
    if (run.length > 1) lines.push({ role, points: run });
    run = [];
  };
  points.forEach((q, i) => {
    if (i === 0) {
      if (map.isSeen(q.x, q.y, q.near)) run.push(point(q.x, q.y));
      return;
    }
    const p = points[i - 1]!;
    const count = Math.max(1, Math.ceil(Math.hypot(q.x - p.x, q.y - p.y) / ASKED));
    for (let n = 1; n <= count; n++) {
      const t = n / count;
      const at = { x: p.x + (q.x - p.x) * t, y: p.y + (q.y - p.y) * t };
      if (map.isSeen(at.x, at.y, p.near + (q.near - p.near) * t)) {
        // Only the ends of a straight step are needed.
        if (n === count || run.length === 0) run.push(at);
        else if (n > 1 && run.length > 1 && straightOn(run, at)) run[run.length - 1] = at;
        else run.push(at);
      } else end();
    }
  });
  end();
  return lines;
};

const straightOn = (run: readonly Point[], at: Point): boolean => {
  const [a, b] = [run.at(-2)!, run.at(-1)!];
  const cross = (b.x - a.x) * (at.y - b.y) - (b.y - a.y) * (at.x - b.x);
  return Math.abs(cross) < 0.02 * Math.hypot(b.x - a.x, b.y - a.y);
};
