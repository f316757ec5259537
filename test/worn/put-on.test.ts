import { describe, expect, test } from 'vitest';
import { defaultsOf } from '../../src/caps/parameter.ts';
import type { Head } from '../../src/caps/style.ts';
import { checkSeams } from '../../src/pattern/seam-check.ts';
import { giveOf } from '../../src/worn/give.ts';
import { headCut, headForm } from '../../src/worn/head-form.ts';
import { putOn, type Worn } from '../../src/worn/put-on.ts';
import { seamLine } from '../../src/worn/seam-line.ts';
import {
  type Assembled,
  assembled,
  capsOf,
  chosenOf,
  depthInHead,
  gapBetween,
  lengthOf,
  styles,
  trueTo,
} from './worn-caps.ts';

const isAsItComes = ({ style, values }: Assembled): boolean =>
  JSON.stringify(values) === JSON.stringify(defaultsOf(style.parameters));

const worn = new WeakMap<Assembled, Worn>();
const on = (cap: Assembled): Worn => {
  const known = worn.get(cap) ?? putOn(cap.sheets, cap.draft, cap.head);
  worn.set(cap, known);
  return known;
};

/** Seams within the cap and of what is not put on a head: the lining, the under side of visor and brim, straps, bindings, ties. */
const WITHIN =
  /^(lining|under|sweatband|casing|tie\d|strapEdge|visorEdge|backStrap|backOpening|brimEdge|brimInner|lowerEdge)/;

/**
 * How many seams of the shell of a cap on its head are closed. Any other fails, but for what is gathered and what stands there as a
 * likeness alone.
 */
const closedSeams = (cap: Assembled, { sheets }: Worn): number => {
  const likened = new Set(sheets.filter(({ likeness }) => likeness).map(({ piece }) => piece));
  let closed = 0;
  for (const { seam } of checkSeams(cap.draft.pattern)) {
    if (seam.ease !== 0 || [...seam.a, ...seam.b].some(({ piece }) => likened.has(piece))) continue;
    const [a, b] = [seam.a, seam.b].map((chain) => seamLine(sheets, cap.draft.pattern.pieces, chain));
    if (!a || !b) {
      expect(seam.id, `${cap.title}: no line of ${seam.name}`).toMatch(WITHIN);
      continue;
    }
    closed++;
    expect(gapBetween(a.points, b.points), `${cap.title}: ${seam.name}`).toBeLessThan(0.05);
  }
  return closed;
};

/** The seams of the shell of a style as it comes, by what is sewn to what. */
const SHELL_SEAMS: Readonly<Record<string, number>> = {
  // Four side seams, the tip, the band’s back, band to side, the visor.
  'flat-top': 8,
  // Seven between eight gores, one of them over the top; the band’s back, band to gores, the visor.
  gored: 7 + 3,
  // Two long seams and the visor.
  'three-piece': 3,
  // Four down to the sides, one over the top, the visor.
  ball: 6,
  // A side seam, the tip, the brim’s ends, crown to brim.
  bucket: 4,
  // Two seams of the brim; its crown of gores stands as a likeness.
  'sun-hat': 2,
  // Two seams of the under ring, the top, the band’s back, band to ring.
  beret: 5,
  // A side seam and the tip.
  pillbox: 2,
  // Five between six gores, one of them over the top.
  skull: 5,
  // Two long seams.
  scrub: 2,
};

for (const style of styles) {
  describe(`a ${style.name.toLowerCase()} on a head`, () => {
    const caps = capsOf(style);

    test('is closed along every seam of its shell, the visor’s too, straight and to one side', () => {
      for (const cap of caps) {
        const both = [on(cap), putOn(cap.sheets, cap.draft, cap.head, true)];
        for (const worn of both) {
          const closed = closedSeams(cap, worn);
          if (isAsItComes(cap)) expect(closed, cap.title).toBe(SHELL_SEAMS[style.id]);
          else expect(closed, cap.title).toBeGreaterThan(0);
        }
      }
    });

    test('is closed whatever is chosen of it, and with the longest visor', () => {
      const chosen = chosenOf(style);
      expect(chosen.length).toBeGreaterThan(0);
      for (const cap of chosen) {
        expect(closedSeams(cap, putOn(cap.sheets, cap.draft, cap.head)), cap.title).toBeGreaterThan(0);
      }
    });

    test('does not enter the head, but for the millimetre that hair gives', () => {
      for (const cap of caps) {
        for (const tilted of [false, true]) {
          const { sheets, head, lift } = tilted ? putOn(cap.sheets, cap.draft, cap.head, true) : on(cap);
          const closed = sheets.filter(({ open }) => !open);
          expect(depthInHead(closed, head), cap.title).toBeLessThan(1.3);
          expect(lift, cap.title).toBeGreaterThanOrEqual(0);
          expect(lift, cap.title).toBeLessThan(head.top);
        }
      }
    });

    test('leaves room for what lies between its shell and the head, but for the millimetre that hair gives', () => {
      const thick = caps.filter(({ head }) => head.turn);
      expect(thick.length).toBe(1);
      for (const cap of thick) {
        const { sheets, head } = on(cap);
        // What goes round further by 2π times a thickness has that thickness between (closed form of a ring).
        const between = cap.head.turn!.shell / (2 * Math.PI);
        expect(between, cap.title).toBeGreaterThan(1);
        let [beside, above] = [Infinity, Infinity];
        for (const { open, at } of sheets) {
          for (let k = 0; k < at.length && !open; k += 3) {
            const [x, y, z] = [at[k]!, at[k + 1]!, at[k + 2]!];
            const reach = Math.hypot(x, y);
            const share = Math.hypot(x / head.halfBreadth, y / head.halfLength);
            if (reach < 5) above = Math.min(above, z - head.top);
            const low = z < 1 && z > -1;
            if (low) beside = Math.min(beside, reach - reach / share);
          }
        }
        expect(above, cap.title).toBeGreaterThan(between - 0.5);
        if (beside < Infinity) expect(beside, cap.title).toBeGreaterThan(between - 1.3);
      }
    });

    test('keeps the length of its lower edge and of the visor’s, and asks of the cloth no more than cloth gives', () => {
      let measured = 0;
      for (const cap of caps) {
        const { sheets } = on(cap);
        const standing = trueTo(cap);
        const seams = checkSeams(cap.draft.pattern);
        for (const edge of seams.filter(({ seam }) => ['lowerEdge', 'visorToBand'].includes(seam.id))) {
          for (const side of ['a', 'b'] as const) {
            const chain = edge.seam[side];
            const line = chain.every(({ piece }) => standing.has(piece))
              ? seamLine(sheets, cap.draft.pattern.pieces, chain)
              : null;
            if (line === null) continue;
            measured++;
            const what = `${cap.title}: ${edge.seam.name}`;
            expect(Math.abs(lengthOf(line.points) - edge[side]), what).toBeLessThan(0.05);
          }
        }
        // Woven cloth on the bias stretches by several in a hundred (common practice); this is the mean over the whole cap. The
        // under ring of a beret, between a round edge and an oval band, gives most.
        const most = style.id === 'beret' ? 0.06 : 0.03;
        expect(giveOf(cap.sheets, sheets).mean, cap.title).toBeLessThan(most);
      }
      expect(measured).toBeGreaterThan(caps.length / 2);
    });
  });
}

describe('a head form', () => {
  const head: Head = { girth: 560, ratio: 0.8, arc: 315 };

  test('is as long round, as broad by its length and as long over the top as the head', () => {
    const form = headForm(head);
    expect(form.halfBreadth / form.halfLength).toBeCloseTo(0.8, 9);
    const steps = 20000;
    const round = Array.from({ length: steps + 1 }, (_, i) => {
      const { halfLength, halfBreadth } = headCut(form, 0)!;
      const t = (i * 2 * Math.PI) / steps;
      return { x: halfBreadth * Math.cos(t), y: halfLength * Math.sin(t), z: 0 };
    });
    expect(Math.abs(lengthOf(round) - 560)).toBeLessThan(0.01);
    const over = (half: 'halfLength' | 'halfBreadth') =>
      2 *
      lengthOf(
        Array.from({ length: steps + 1 }, (_, i) => {
          // Closer together towards the top, where the profile runs level.
          const z = form.top * Math.sin((i / steps) * (Math.PI / 2));
          return { x: headCut(form, Math.min(z, form.top))![half], y: 0, z };
        }),
      );
    expect(Math.abs((over('halfLength') + over('halfBreadth')) / 2 - 315)).toBeLessThan(0.5);
  });

  test('is widest at the tape', () => {
    const form = headForm(head);
    for (let z = form.foot; z <= form.top; z += 1) {
      const cut = headCut(form, z)!;
      expect(cut.halfLength).toBeLessThanOrEqual(form.halfLength + 1e-9);
      expect(cut.halfBreadth).toBeLessThanOrEqual(form.halfBreadth + 1e-9);
    }
  });
});

/** From the lowest to the highest place, leaving out what is open below. */
const heightOf = (cap: Assembled): number => {
  const zs = cap.sheets
    .filter(({ open, piece }) => !open && piece !== 'topButton')
    .flatMap(({ at }) => [...at].filter((_, k) => k % 3 === 2));
  return Math.max(...zs.map((z) => z)) - Math.min(...zs);
};

const styleOf = (name: string) => styles.find((style) => style.name === name)!;
const IN = 25.4;

describe('a cap as it comes, on a head of 560 mm', () => {
  const head: Head = { girth: 560, ratio: 0.8, arc: 315 };
  const usual = (name: string) => assembled(styleOf(name), {}, head);

  test('stands as high as the trade has it', () => {
    // "about three and one half inches high": service cap, Webster's dictionary, 1913; ours is a little fuller.
    expect(heightOf(usual('Flat-top cap')) / IN).toBeGreaterThan(3.1);
    expect(heightOf(usual('Flat-top cap')) / IN).toBeLessThan(4);
    // Common practice: pillbox side 2 to 3 1/2 in; bucket side 3 to 4 in.
    expect(heightOf(usual('Pillbox')) / IN).toBeGreaterThan(2);
    expect(heightOf(usual('Pillbox')) / IN).toBeLessThan(3.5);
    expect(heightOf(usual('Bucket hat')) / IN).toBeGreaterThan(2.9);
    expect(heightOf(usual('Bucket hat')) / IN).toBeLessThan(4);
  });

  test('has a visor that stands out as far, and a brim as broad and as steep, as the trade has them', () => {
    const reach = (name: string) => {
      const { sheets } = on(usual(name));
      const visor = sheets.find(({ open, piece }) => open && piece === 'visor')!;
      const ys = [...visor.at].filter((_, k) => k % 3 === 1);
      const edge = Array.from({ length: visor.rows }, (_, row) => visor.at[3 * row * visor.columns + 1]!);
      return Math.max(...ys) - Math.max(...edge);
    };
    // Common practice: 2 to 3 in deep, dropped by 15° to 45°: from the front it stands out 2 in · cos 45° to 3 in · cos 15°.
    for (const name of ['Flat-top cap', 'Gored cap', 'Ball cap']) {
      expect(reach(name), name).toBeGreaterThan(2 * IN * Math.cos(Math.PI / 4));
      expect(reach(name), name).toBeLessThan(3 * IN * Math.cos(Math.PI / 12));
    }
    // Common practice: bucket brim 2 to 3 in, 30° to 60° below level.
    const { sheets } = on(usual('Bucket hat'));
    const brim = sheets.find(({ open }) => open)!;
    for (let row = 0; row < brim.rows; row += 10) {
      const [p, q] = [3 * row * brim.columns, 3 * (row * brim.columns + brim.columns - 1)];
      const [dx, dy, dz] = [0, 1, 2].map((c) => brim.at[q + c]! - brim.at[p + c]!) as [
        number,
        number,
        number,
      ];
      const wide = Math.hypot(dx, dy, dz);
      expect(wide / IN).toBeGreaterThan(2);
      expect(wide / IN).toBeLessThan(3);
      const steep = Math.asin(-dz / wide);
      expect(steep).toBeGreaterThan(Math.PI / 6 - 1e-6);
      expect(steep).toBeLessThan(Math.PI / 3 + 1e-6);
    }
  });

  test('is widest where the trade has it', () => {
    const widest = (name: string) => {
      const { sheets } = usual(name);
      return Math.max(
        ...sheets
          .filter(({ open }) => !open)
          .flatMap(({ at }) =>
            Array.from({ length: at.length / 3 }, (_, k) => Math.hypot(at[3 * k]!, at[3 * k + 1]!)),
          ),
      );
    };
    // Common practice: the crown of a flat top is 4 in longer round than the opening; a beret overhangs its band by 3 to 8 cm.
    const flat = usual('Flat-top cap');
    expect(2 * Math.PI * widest('Flat-top cap')).toBeCloseTo(flat.draft.finishedGirth + 4 * IN, 0);
    const beret = usual('Beret');
    const overhang = widest('Beret') - beret.draft.finishedGirth / (2 * Math.PI);
    expect(overhang).toBeGreaterThan(30);
    expect(overhang).toBeLessThan(80);
  });
});
