import type { Form, FormStrip } from '../caps/form.ts';
import { type Box, boxUnion } from '../geometry/box.ts';
import { type Point, point } from '../geometry/point.ts';
import type { Point3 } from '../geometry/space.ts';

/** A form as it is seen from in front, a little to one side and above: patches to be filled and outlined in this order. */
export interface FormPicture {
  readonly box: Box;
  /** SVG path data, y down. */
  readonly patches: readonly string[];
}

/** Where the eye is: to the wearer's left of the front, and above, radians. */
const ASIDE = 0.62;
const ABOVE = 0.42;

const [sinA, cosA, sinB, cosB] = [Math.sin(ASIDE), Math.cos(ASIDE), Math.sin(ABOVE), Math.cos(ABOVE)];
/** Towards the eye. */
const EYE: Point3 = { x: -sinA * cosB, y: cosA * cosB, z: sinB };
const seen = ({ x, y, z }: Point3): Point =>
  point(-x * cosA - y * sinA, z * cosB - (y * cosA - x * sinA) * sinB);

/** Far things are drawn before near ones: from above, the lower before the higher. */
export const formPicture = (form: Form): FormPicture => {
  const patches = formPatches(form);
  return {
    box: boxUnion(patches.map(({ outline }) => boxOf(outline))),
    patches: patches.map(({ outline }) => pathData(outline)),
  };
};

/** The same patches as points, y up, each with the strip it is of. */
export const formPatches = ({ strips }: Form): readonly (Patch & { readonly of: FormStrip })[] =>
  strips
    .flatMap((strip) => patchesOf(strip).map((patch) => ({ ...patch, of: strip })))
    .sort((a, b) => a.height - b.height);

interface Patch {
  readonly outline: readonly Point[];
  readonly height: number;
}

/** The stretches of a strip that face the eye; of a brim or visor, whose both faces are seen, all stretches. */
const patchesOf = ({ strip: { left, right }, open }: FormStrip): readonly Patch[] => {
  const patches: Patch[] = [];
  const facing = left.slice(1).map((_, i) => faces(left, right, i));
  let from = 0;
  for (let i = 1; i <= facing.length; i++) {
    if (i < facing.length && facing[i] === facing[from]) continue;
    if (open || facing[from]) patches.push(patchOf(left, right, from, i));
    from = i;
  }
  return patches;
};

/** Whether the outside between two rulings is turned to the eye. Outside is away from the middle of the head. */
const faces = (left: readonly Point3[], right: readonly Point3[], i: number): boolean => {
  const [a, b, c, d] = [left[i]!, right[i]!, right[i + 1]!, left[i + 1]!];
  const [ux, uy, uz] = [c.x - a.x, c.y - a.y, c.z - a.z];
  const [vx, vy, vz] = [d.x - b.x, d.y - b.y, d.z - b.z];
  const n = { x: uy * vz - uz * vy, y: uz * vx - ux * vz, z: ux * vy - uy * vx };
  const out = n.x * (a.x + c.x) + n.y * (a.y + c.y) + n.z * (a.z + c.z);
  return (n.x * EYE.x + n.y * EYE.y + n.z * EYE.z) * out > 0;
};

/** Points enough for a drawing the size of a thumb. */
const MOST_POINTS = 24;

const patchOf = (left: readonly Point3[], right: readonly Point3[], from: number, to: number): Patch => {
  const step = Math.max(1, Math.floor((to - from) / MOST_POINTS));
  const picked = [...left.keys()].filter((i) => i === to || (i >= from && i < to && (i - from) % step === 0));
  const rail = (points: readonly Point3[]) => picked.map((i) => points[i]!);
  const round = [...rail(left), ...rail(right).reverse()];
  return {
    outline: round.map(seen),
    height: round.reduce((sum, p) => sum + p.z, 0) / round.length,
  };
};

const boxOf = (points: readonly Point[]): Box => ({
  min: point(Math.min(...points.map((p) => p.x)), Math.min(...points.map((p) => p.y))),
  max: point(Math.max(...points.map((p) => p.x)), Math.max(...points.map((p) => p.y))),
});

const pathData = (points: readonly Point[]): string =>
  `M${points.map(({ x, y }) => `${x.toFixed(1)} ${(-y).toFixed(1)}`).join('L')}Z`;
