import { describe, expect, test } from 'vitest';
import { ball } from '../../src/caps/ball/ball.ts';
import { beret } from '../../src/caps/beret/beret.ts';
import { flatTop } from '../../src/caps/flat-top/flat-top.ts';
import type { Values } from '../../src/caps/parameter.ts';
import type { Style } from '../../src/caps/style.ts';
import { FAR } from '../../src/worn/edge-distances.ts';
import { meshOf } from '../../src/worn/mesh.ts';
import { putOn } from '../../src/worn/put-on.ts';
import { trimmed } from '../../src/worn/trimmed.ts';
import { HEADS } from '../caps/family.ts';
import { assembled } from './worn-caps.ts';

const cap = assembled(flatTop, {}, HEADS[3]!);
const { pieces } = cap.draft.pattern;
const worn = putOn(cap.sheets, cap.draft, cap.head);
const sheets = trimmed(worn.sheets, pieces);
const mesh = meshOf(sheets, pieces);
const count = mesh.position.length / 3;
const partOf = (k: number) => mesh.parts[mesh.part[2 * k]!]!;

describe('the mesh of a flat-top cap', () => {
  test('points its normals outwards, and all are of length one', () => {
    // What stands in one place several times belongs to no triangle, and needs none.
    for (const k of new Set(mesh.index)) {
      const [x, y, z] = [0, 1, 2].map((c) => mesh.normal[3 * k + c]!) as [number, number, number];
      expect(Math.hypot(x, y, z)).toBeCloseTo(1, 4);
      if (partOf(k) === 'tip') expect(z).toBeGreaterThan(0.9);
      if (partOf(k) === 'band')
        expect(x * mesh.position[3 * k]! + y * mesh.position[3 * k + 1]!).toBeGreaterThan(0);
    }
  });

  test('lays the cloth along the grain of each piece: along the band, and from back to front on the tip', () => {
    const along = (part: string, c: 0 | 1) => {
      const values: number[] = [];
      for (let k = 0; k < count; k++) if (partOf(k) === part) values.push(mesh.cloth[2 * k + c]!);
      return Math.max(...values) - Math.min(...values);
    };
    // The band's grain runs round the head, the tip's from back to front: both as drawn on the pieces.
    expect(Math.abs(along('band', 1) - cap.draft.finishedGirth)).toBeLessThan(0.05);
    const tip = pieces.find(({ id }) => id === 'tip')!;
    expect(tip.grain[0].x).toBe(tip.grain[1].x);
    let [front, back] = [-Infinity, Infinity];
    let [atFront, atBack] = [0, 0];
    for (let k = 0; k < count; k++) {
      if (partOf(k) !== 'tip') continue;
      const y = mesh.position[3 * k + 1]!;
      if (y > front) [front, atFront] = [y, mesh.cloth[2 * k + 1]!];
      if (y < back) [back, atBack] = [y, mesh.cloth[2 * k + 1]!];
    }
    expect(atFront - atBack).toBeCloseTo(along('tip', 1), 1);
  });

  test('knows at each corner how far it is from the edges of its piece', () => {
    // The band is 38.1 mm high: from rail to rail it is that far everywhere.
    const height = 38.1;
    for (let k = 0; k < count; k++) {
      if (partOf(k) !== 'band') continue;
      expect(mesh.edges[4 * k]! + mesh.edges[4 * k + 1]!).toBeCloseTo(height, 1);
      expect(mesh.edges[4 * k + 2]! + mesh.edges[4 * k + 3]!).toBeCloseTo(cap.draft.finishedGirth, 1);
    }
    // A tip begins and ends in a point: it has no edge there.
    for (let k = 0; k < count; k++) if (partOf(k) === 'tip') expect(mesh.edges[4 * k + 2]).toBe(FAR);
  });

  test('has its visor as thick as two covers and a stiffener, and the strap with two buttons on the band', () => {
    const [zs, visor]: [number[], number[]] = [[], []];
    for (let k = 0; k < count; k++) if (partOf(k) === 'visor') visor.push(k);
    for (const k of visor) zs.push(mesh.position[3 * k + 2]!);
    expect(visor.length).toBeGreaterThan(1000);
    const strap = sheets.filter(({ piece }) => piece === 'strap');
    expect(strap.length).toBe(3);
    const band = worn.sheets.find(({ piece }) => piece === 'band')!;
    const top = Math.max(...[...band.at].filter((_, i) => i % 3 === 2));
    const low = Math.min(...[...band.at].filter((_, i) => i % 3 === 2));
    for (const { at } of strap) {
      for (let k = 2; k < at.length; k += 3) {
        expect(at[k]!).toBeGreaterThan(low);
        expect(at[k]!).toBeLessThan(top);
      }
    }
    // From one button to the other by the front, no farther than the strap is long.
    const [left, right] = strap.slice(1).map(({ at }) => at[0]!);
    expect(Math.sign(left!)).toBe(-Math.sign(right!));
  });

  test('uses every corner that it names, and only those', () => {
    expect(Math.max(...mesh.index)).toBeLessThan(count);
    expect(mesh.index.length % 3).toBe(0);
    for (const value of mesh.position) expect(Number.isFinite(value)).toBe(true);
  });
});

/** The mesh of a cap that is worn, with what is sewn on it. */
const wornMesh = (style: Style, values: Partial<Values>, outer = 0) => {
  const { sheets: drafted, draft, head } = assembled(style, values, HEADS[3]!);
  const all = trimmed(putOn(drafted, draft, head).sheets, draft.pattern.pieces);
  return { sheets: all, draft, mesh: meshOf(all, draft.pattern.pieces, outer) };
};

describe('what is sewn on a cap', () => {
  test('is a button on top that stays round and is domed, and an eyelet in every gore', () => {
    const { sheets: all, draft } = wornMesh(ball, { topButtonDiameter: 20 });
    const [button] = all.filter(({ disc }) => disc === 'button');
    const { rows, columns, at } = button!;
    const place = (row: number, column: number) => [...at.slice(3 * (row * columns + column)).slice(0, 3)];
    const [, , middle] = place(0, 0);
    for (let row = 0; row < rows; row++) {
      const [x, y, low] = place(row, columns - 1);
      expect(Math.hypot(x!, y!)).toBeCloseTo(10, 6);
      // Half-way out a parabola has come down by a quarter of its height, and a cone by half.
      const [, , half] = place(row, (columns - 1) / 2);
      expect((middle! - half!) / (middle! - low!)).toBeCloseTo(0.25, 1);
    }
    const eyelets = all.filter(({ disc }) => disc === 'eyelet');
    const gores = draft.pattern.pieces.filter(({ marks }) => marks.some(({ kind }) => kind === 'eyelet'));
    expect(eyelets.length).toBe(gores.reduce((sum, { cuts }) => sum + cuts[0]!.count, 0));
  });

  test('is a fold for each pleat, as many as are marked', () => {
    const { mesh: pleated, draft } = wornMesh(flatTop, { crownGather: 0.3, gatherAs: 'pleats', pleats: 3 });
    const marked = draft.pattern.pieces.find(({ id }) => id.startsWith('sideBand'))!;
    expect(marked.marks.filter(({ kind }) => kind === 'pleat').length).toBe(3);
    let seen = 0;
    for (let k = 0; k < pleated.position.length / 3; k++) {
      const step = pleated.trim[4 * k + 3]!;
      if (!pleated.parts[pleated.part[2 * k]!]!.startsWith('sideBand')) expect(step).toBe(0);
      else if (pleated.edges[4 * k + 3]! < 1e-3) {
        seen++;
        expect(pleated.trim[4 * k + 1]! / step).toBeCloseTo(3, 3);
      }
    }
    expect(seen).toBeGreaterThan(0);
  });

  test('has no seam at the rim of one gathered disc, and is drawn up at its band', () => {
    const { mesh: gathered } = wornMesh(beret, { beretCrown: 'gathered' });
    const [rim, band] = [new Set<number>(), new Set<number>()];
    for (let k = 0; k < gathered.position.length / 3; k++) {
      if (gathered.parts[gathered.part[2 * k]!] !== 'tip') continue;
      rim.add(gathered.edges[4 * k]!);
      band.add(gathered.edges[4 * k + 1]!);
    }
    expect([...rim]).toEqual([FAR]);
    expect(Math.min(...band)).toBeCloseTo(0, 3);
  });

  test('makes a visor as much thicker as its two covers are', () => {
    const thicknessIn = (outer: number) => {
      const { mesh: one, sheets: all } = wornMesh(flatTop, {}, outer);
      const visor = all.find(({ piece }) => piece === 'visor')!;
      const first = one.part.findIndex((part, i) => i % 2 === 0 && one.parts[part] === 'visor') / 2;
      // The ends run out into a point; in the middle it is as thick as anywhere.
      const over = first + (visor.rows >> 1) * visor.columns + 1;
      const under = over + visor.rows * visor.columns;
      const apart = (c: number) => one.position[3 * over + c]! - one.position[3 * under + c]!;
      return Math.hypot(apart(0), apart(1), apart(2));
    };
    expect(thicknessIn(2) - thicknessIn(0.5)).toBeCloseTo(2 * 1.5, 3);
  });
});
