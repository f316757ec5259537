import { describe, expect, test } from 'vitest';
import { bucket } from '../../src/caps/bucket/bucket.ts';
import { flatTop } from '../../src/caps/flat-top/flat-top.ts';
import { liningOf } from '../../src/caps/lining-of.ts';
import { areaOf } from '../../src/geometry/area.ts';
import type { Point3 } from '../../src/geometry/space.ts';
import { checkSeams } from '../../src/pattern/seam-check.ts';
import { pieceSeenAt } from '../../src/ui/preview/pick.ts';
import { assemble } from '../../src/worn/assemble.ts';
import { axesOf, views } from '../../src/worn/gaze.ts';
import { giveOf } from '../../src/worn/give.ts';
import { meshOf, SEEN } from '../../src/worn/mesh.ts';
import { putOn } from '../../src/worn/put-on.ts';
import { seamLine } from '../../src/worn/seam-line.ts';
import { knotAt, type Sheet, trianglesIn } from '../../src/worn/sheet.ts';
import { HEADS, outlineOf } from '../caps/family.ts';
import {
  type Assembled,
  areaInSpace,
  assembled,
  capsOf,
  depthInHead,
  gapBetween,
  lengthOf,
  styles,
} from './worn-caps.ts';

/** The lining of a cap as it is drafted, and on the head; with the shell there. */
const linedUp = ({ draft, head, values, style, sheets }: Assembled, tilted = false) => {
  const own = liningOf(style)?.form(values, head).strips ?? [];
  const drafted = assemble({ strips: own }, draft.pattern.pieces);
  const on = putOn(sheets, draft, head, tilted);
  return { drafted, worn: on.line(drafted), shell: on.sheets, head: on.head };
};

/** The pieces of a pattern that are a lining's: a band's facing, where there is none, is of the cap's own cloth. */
const liningPieces = ({ draft }: Assembled): readonly string[] =>
  draft.pattern.pieces
    .filter(({ id, name }) => id.startsWith('lining') && name.startsWith('Lining'))
    .map(({ id }) => id)
    .sort();

for (const style of styles) {
  describe(`the lining of a ${style.name.toLowerCase()}`, () => {
    const caps = capsOf(style).map((cap) => ({ cap, ...linedUp(cap) }));

    test('stands there with every piece that the pattern cuts for it, and not without one', () => {
      for (const { cap, drafted } of caps) {
        expect([...new Set(drafted.map(({ piece }) => piece))].sort(), cap.title).toEqual(liningPieces(cap));
      }
      const unlined = assembled(style, { lining: false, reversible: false }, HEADS[4]!);
      expect(linedUp(unlined).worn, style.name).toEqual([]);
    });

    test('is as long along its seams as its flat pieces, as large, and closed, as drafted and on the head', () => {
      for (const { cap, drafted, worn } of caps) {
        const { pieces } = cap.draft.pattern;
        const likened = new Set(drafted.filter(({ likeness }) => likeness).map(({ piece }) => piece));
        const standing = new Set(drafted.map(({ piece }) => piece).filter((piece) => !likened.has(piece)));
        for (const { seam, a, b } of checkSeams(cap.draft.pattern)) {
          const what = `${cap.title}: ${seam.name}`;
          const lines = [seam.a, seam.b].map((chain) =>
            chain.every(({ piece }) => standing.has(piece))
              ? [drafted, worn].map((sheets) => seamLine(sheets, pieces, chain)!.points)
              : null,
          );
          for (const [i, line] of lines.entries()) {
            if (!line) continue;
            expect(Math.abs(lengthOf(line[0]!) - [a, b][i]!), what).toBeLessThan(0.05);
            // What is sewn to the shell keeps its length when it is put on.
            if (/^(lowerEdge|liningEdge)$/.test(seam.id))
              expect(Math.abs(lengthOf(line[1]!) - [a, b][i]!), what).toBeLessThan(0.05);
          }
          const [one, other] = lines;
          if (!one || !other || seam.ease !== 0) continue;
          for (const n of [0, 1]) expect(gapBetween(one[n]!, other[n]!), what).toBeLessThan(0.05);
        }
        for (const piece of standing) {
          const own = drafted.filter((sheet) => sheet.piece === piece && sheet.copy === 0);
          const flat = areaOf(outlineOf(pieces.find(({ id }) => id === piece)!));
          const area = own.reduce((sum, sheet) => sum + areaInSpace(sheet), 0);
          expect(Math.abs(area / flat - 1), `${cap.title}: ${piece}`).toBeLessThan(0.003);
        }
      }
    });

    test('gives no more than its shell does, and a hundredth at most besides', () => {
      for (const { cap, drafted, worn, shell } of caps) {
        if (drafted.length === 0) continue;
        const most = giveOf(cap.sheets.filter(isCrown), shell.filter(isCrown)).mean + 0.01;
        expect(giveOf(drafted, worn).mean, cap.title).toBeLessThan(most);
      }
    });

    test('lies within its shell, and off it at the edge by the cloth between the two', () => {
      for (const { cap, worn, shell } of caps) {
        if (worn.length === 0) continue;
        // A beret that lies quite flat has no room between its top and its under ring to look out from.
        if (cap.values.underSlope !== 0) {
          expect(farthestOutside(worn, shell), cap.title).toBeLessThan(0.1);
        }
        const { turn } = cap.head;
        if (!turn) continue;
        // What goes round further by 2π times a thickness has that thickness between (closed form of a ring).
        const between = (turn.shell - turn.lining) / (2 * Math.PI);
        expect(between).toBeGreaterThan(0.5);
        const reach = (sheets: readonly Sheet[]) =>
          Math.max(...lowest(sheets).map(({ y }) => y)) - Math.min(...lowest(sheets).map(({ y }) => y));
        const apart = (reach(shell.filter(({ open }) => !open)) - reach(worn)) / 2;
        expect(Math.abs(apart - between), cap.title).toBeLessThan(0.15 * between + 0.05);
      }
    });

    test('does not enter the head, but for the millimetre that hair gives, straight and to one side', () => {
      for (const { cap } of caps) {
        for (const tilted of [false, true]) {
          const { worn, head } = linedUp(cap, tilted);
          expect(depthInHead(worn, head), cap.title).toBeLessThan(1.3);
        }
      }
    });
  });
}

const isCrown = ({ open }: Sheet): boolean => !open;

/** Knots on the lower edge. */
const lowest = (sheets: readonly Sheet[]): readonly Point3[] => {
  const all = sheets.flatMap((sheet) =>
    Array.from({ length: sheet.at.length / 3 }, (_, k) => knotAt(sheet, k)),
  );
  const least = Math.min(...all.map(({ z }) => z));
  return all.filter(({ z }) => z < least + 1e-6);
};

/** The shell's triangles by the way they lie round the middle: a line outwards meets only those that lie its way. */
const WAYS = 90;
const wayOf = (x: number, y: number): number => ((Math.atan2(y, x) / (2 * Math.PI)) * WAYS + WAYS) % WAYS;

const byWay = (sheets: readonly Sheet[]): readonly (readonly [Float64Array, number, number, number])[][] => {
  const ways: [Float64Array, number, number, number][][] = Array.from({ length: WAYS }, () => []);
  for (const sheet of sheets) {
    const all = trianglesIn(sheet);
    for (let i = 0; i < all.length; i += 3) {
      const [a, b, c] = [0, 1, 2].map((n) => 3 * all[i + n]!) as [number, number, number];
      const first = wayOf(sheet.at[a]!, sheet.at[a + 1]!);
      // How far on from the first corner the others lie, either way round.
      const on = [a, b, c].map(
        (k) => ((wayOf(sheet.at[k]!, sheet.at[k + 1]!) - first + 1.5 * WAYS) % WAYS) - WAYS / 2,
      );
      const [from, to] = [Math.floor(first + Math.min(...on)), Math.floor(first + Math.max(...on))];
      // Over the middle, or nearly so? Then it lies every way.
      const [start, end] = to - from > WAYS / 3 ? [0, WAYS - 1] : [from, to];
      for (let way = start; way <= end; way++) ways[(way + WAYS) % WAYS]!.push([sheet.at, a, b, c]);
    }
  }
  return ways;
};

/**
 * How far a lining is outside its shell where it is farthest, mm: along straight lines from the middle of the cap, by where they
 * meet the shell first (T. Möller and B. Trumbore, Fast, Minimum Storage Ray/Triangle Intersection, 1997).
 */
const farthestOutside = (lining: readonly Sheet[], shell: readonly Sheet[]): number => {
  const closed = shell.filter(({ open, piece }) => !open && piece !== 'topButton');
  const heights = closed.flatMap(({ at }) => [...at].filter((_, k) => k % 3 === 2));
  const low = Math.min(...heights);
  const from = { x: 0, y: 0, z: low + 0.4 * (Math.max(...heights) - low) };
  const ways = byWay(closed);
  let most = 0;
  for (const sheet of lining) {
    for (let k = 0; k < sheet.at.length / 3; k += 11) {
      const p = knotAt(sheet, k);
      const [dx, dy, dz] = [p.x - from.x, p.y - from.y, p.z - from.z];
      let first = Infinity;
      for (const [at, a, b, c] of ways[Math.floor(wayOf(dx, dy)) % WAYS]!) {
        first = Math.min(first, meets(at, a, b, c, from, dx, dy, dz));
      }
      most = Math.max(most, (1 - first) * Math.hypot(dx, dy, dz));
    }
  }
  return most;
};

const meets = (
  at: Float64Array,
  a: number,
  b: number,
  c: number,
  from: Point3,
  dx: number,
  dy: number,
  dz: number,
): number => {
  const [ux, uy, uz] = [at[b]! - at[a]!, at[b + 1]! - at[a + 1]!, at[b + 2]! - at[a + 2]!];
  const [vx, vy, vz] = [at[c]! - at[a]!, at[c + 1]! - at[a + 1]!, at[c + 2]! - at[a + 2]!];
  const [px, py, pz] = [dy * vz - dz * vy, dz * vx - dx * vz, dx * vy - dy * vx];
  const size = ux * px + uy * py + uz * pz;
  if (Math.abs(size) < 1e-12) return Infinity;
  const [tx, ty, tz] = [from.x - at[a]!, from.y - at[a + 1]!, from.z - at[a + 2]!];
  const s = (tx * px + ty * py + tz * pz) / size;
  if (s < 0 || s > 1) return Infinity;
  const [qx, qy, qz] = [ty * uz - tz * uy, tz * ux - tx * uz, tx * uy - ty * ux];
  const t = (dx * qx + dy * qy + dz * qz) / size;
  if (t < 0 || s + t > 1) return Infinity;
  const along = (vx * qx + vy * qy + vz * qz) / size;
  return along > 0 ? along : Infinity;
};

describe('a lined cap as it is painted', () => {
  const cap = assembled(flatTop, {}, HEADS[3]!);
  const { worn, shell } = linedUp(cap);
  const { pieces } = cap.draft.pattern;
  const mesh = meshOf([...shell, ...worn], pieces);
  const faceOf = (part: string) => {
    const k = mesh.part.findIndex((at, i) => i % 2 === 0 && mesh.parts[at] === part);
    return mesh.part[k + 1];
  };

  test('shows its lining from below, where a hand finds it, and its tip from above', () => {
    expect(pieceSeenAt(mesh, axesOf(views.inside), 5, 5)).toBe('liningTip');
    expect(pieceSeenAt(mesh, axesOf(views.top), 5, 5)).toBe('tip');
    expect(pieceSeenAt(meshOf(shell, pieces), axesOf(views.inside), 5, 5)).toBe('tip');
  });

  test('shows the lining’s own cloth within; a hat for both ways out its outer cloth', () => {
    expect(faceOf('liningTip')).toBe(SEEN.lining);
    expect(faceOf('tip')).toBe(SEEN.shell);
    const both = assembled(bucket, { reversible: true }, HEADS[3]!);
    const { worn: inner } = linedUp(both);
    const hat = meshOf(inner, both.draft.pattern.pieces);
    expect(new Set(hat.part.filter((_, i) => i % 2 === 1))).toEqual(new Set([SEEN.inner]));
  });

  test('lays the lining’s cloth along the grain of its pieces: along its band, right side within', () => {
    const [first] = worn.filter(({ piece }) => piece === 'liningBand');
    const alone = meshOf([first!], pieces);
    const along = [...alone.cloth].filter((_, k) => k % 2 === 1);
    expect(Math.abs(Math.max(...along) - Math.min(...along) - cap.draft.finishedGirth)).toBeLessThan(0.05);
    // Seen from within, across the grain runs to the right where along it runs up: as on the face of the cloth.
    const [a, b, c] = [0, 1, 2].map((n) => alone.index[n]!) as [number, number, number];
    const cloth = (k: number) => [alone.cloth[2 * k]!, alone.cloth[2 * k + 1]!] as const;
    const [[ax, ay], [bx, by], [cx, cy]] = [cloth(a), cloth(b), cloth(c)];
    // Triangles run counter-clockwise from outside, and so clockwise from within.
    expect((bx - ax) * (cy - ay) - (by - ay) * (cx - ax)).toBeLessThan(0);
  });
});
