import { expect, test } from 'vitest';
import { defaultsOf, type Values } from '../../src/caps/parameter.ts';
import { fetchStyles, type StyleId } from '../../src/caps/registry.ts';
import { defaultSpec } from '../../src/design/default-spec.ts';
import type { CapSpec } from '../../src/design/spec.ts';
import { drawPattern } from '../../src/drawing/draw-piece.ts';
import type { LineMark, LineRole, TextMark } from '../../src/drawing/drawing.ts';
import { blockSize } from '../../src/drawing/text-block.ts';
import { boundsOf } from '../../src/geometry/bounds.ts';
import { type Box, boxesMeet, boxGrown } from '../../src/geometry/box.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { type Point, rotate, subtract } from '../../src/geometry/point.ts';
import { rowsOf, withRows } from '../../src/guide/rows.ts';
import type { PaperSpec } from '../../src/print/paper.ts';
import type { Sheet } from '../../src/print/sheet.ts';
import { sheetsOf } from '../../src/print/sheets.ts';
import { textBox } from '../../src/print/text-box.ts';
import type { Unit } from '../../src/units.ts';
import { derive } from '../design/derive.ts';

/** How deep a line or another text may come into the frame of a text, mm: less than the air round its letters. */
const HAIR = 0.15;

/** Labels and the names of marks may lie on these where they have no room beside them. */
const GIVE_WAY: ReadonlySet<LineRole> = new Set(['centre', 'dimension']);

const isClear = (text: TextMark, { role, path }: LineMark): boolean => {
  const givesWay = GIVE_WAY.has(role) && text.lines[0] !== 'place on fold';
  if (givesWay || !boxesMeet(boundsOf(path), textBox(text))) return true;
  // In a strap all that it says does not stand between its rows of stitches: they give way.
  if (role === 'row' && text.lines[0]!.startsWith('Strap ·')) return true;
  const { width, height } = blockSize(text);
  const from = text.align === 'start' ? 0 : text.align === 'end' ? -width : -width / 2;
  const min = { x: from + HAIR, y: -height / 2 + HAIR };
  const max = { x: from + width - HAIR, y: height / 2 - HAIR };
  const points = flatten(path, 0.05).map((p) => rotate(subtract(p, text.at), -text.angle));
  return points.slice(1).every((q, i) => !runsThrough({ min, max }, points[i]!, q));
};

/** Whether a straight stretch comes into a box (clipped side by side: Liang and Barsky 1984). */
const runsThrough = ({ min, max }: Box, p: Point, q: Point): boolean => {
  const spans = [
    [p.x, q.x - p.x, min.x, max.x],
    [p.y, q.y - p.y, min.y, max.y],
  ].map(([at, by, low, high]) => {
    if (by === 0) return at! > low! && at! < high! ? [0, 1] : [1, 0];
    const ends = [(low! - at!) / by!, (high! - at!) / by!];
    return [Math.min(...ends), Math.max(...ends)];
  });
  return Math.max(0, ...spans.map(([from]) => from!)) < Math.min(1, ...spans.map(([, to]) => to!));
};

/** The words that the pieces bring, not what the sheet says of itself where it finds the most room. */
const piecesTexts = ({ name, number, of, marks }: Sheet): readonly TextMark[] => {
  const own = [name, `${number} of ${of}`, '25 mm', '1 in'];
  return marks.filter(
    (m): m is TextMark => m.kind === 'text' && (m.role === 'sheet' || !own.includes(m.lines[0]!)),
  );
};

const faultsOf = (sheet: Sheet): readonly string[] => {
  const texts = piecesTexts(sheet);
  const lines = sheet.marks.filter((m): m is LineMark => m.kind === 'line');
  const frames = texts.map((text) => boxGrown(textBox(text), -HAIR / 2));
  return texts.flatMap((text, i) => {
    const under = lines.filter((mark) => !isClear(text, mark)).map(({ role }) => `a ${role} line`);
    const beside = texts.filter((_, k) => k > i && boxesMeet(frames[i]!, frames[k]!));
    return [...under, ...beside.map(({ lines: [first] }) => `“${first}”`)].map(
      (what) => `${sheet.name}: “${text.lines[0]}” on ${what}`,
    );
  });
};

const PAPERS: readonly (readonly [Unit, Partial<PaperSpec>])[] = [
  ['cm', { paper: 'a4', halves: false }],
  ['cm', { paper: 'a4', halves: true }],
  ['in', { paper: 'letter', halves: false }],
  ['in', { paper: 'letter', halves: true }],
];
const NAMES = [
  ['Cornet’s cap', 'Cornet'],
  ['Second tenor horn’s winter cap', 'Second tenor horn'],
] as const;

for (const { id, name, parameters } of await fetchStyles()) {
  test(`on the sheets of a ${name.toLowerCase()} no words lie on a line, a mark or other words`, () => {
    const values = defaultsOf(parameters) as Values;
    const cap = { style: id as StyleId, name: '', values } as CapSpec;
    const draft = derive({ ...defaultSpec, cap }).draft!;
    const pieces = withRows(draft.cutting.pieces, rowsOf({ ...draft, cloths: defaultSpec.cloths }));
    const faults = PAPERS.flatMap(([unit, wish]) =>
      NAMES.flatMap(([cap, wearer]) => {
        const paper = { ...defaultSpec.paper, ...wish };
        const label = { cap, wearer, finishedGirth: draft.finishedGirth, date: '2026-11-25' };
        const options = { unit, halves: paper.halves, dimensions: false, label };
        const drawings = drawPattern({ ...draft.cutting, pieces }, options);
        const { sheets } = sheetsOf(drawings, paper, { ...label, unit });
        const where = `${cap}, ${paper.paper}, ${paper.halves ? 'halves' : 'whole'}`;
        return sheets.filter((s) => s.cell).flatMap((s) => faultsOf(s).map((fault) => `${where}, ${fault}`));
      }),
    );
    expect(faults).toEqual([]);
  }, 120_000);
}
