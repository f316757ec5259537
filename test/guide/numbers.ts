import { rowMarks } from '../../src/drawing/marks/row.ts';
import { flatten } from '../../src/geometry/flatten.ts';
import { pathLength, pointAt } from '../../src/geometry/measure.ts';
import type { Path } from '../../src/geometry/path.ts';
import { distance, dot, type Point, subtract } from '../../src/geometry/point.ts';
import type { Row } from '../../src/guide/rows.ts';
import type { Step } from '../../src/guide/step.ts';
import type { Piece, PieceMark } from '../../src/pattern/piece.ts';
import type { EdgeUse, Seam } from '../../src/pattern/seam.ts';
import type { Words } from '../../src/words.ts';
import type { Written } from './caps.ts';

/** One step of one cap, of which a sentence tells. */
interface Told {
  readonly cap: Written;
  readonly step: Step;
}

/** What the numbers of a sentence may be, one set for each thing that the step may mean: for most there is one. */
type Sets = readonly (readonly number[])[];

export const pieceOf = (cap: Written, id: string): Piece => {
  const piece = cap.draft.pattern.pieces.find((one) => one.id === id);
  if (piece === undefined) throw new Error(`${cap.name} has no ${id}`);
  return piece;
};

export const edgeOf = (cap: Written, piece: string, edge: string): Path =>
  pieceOf(cap, piece).outline.find(({ name }) => name === edge)!.path;

const edgeLength = (cap: Written, piece: string, edge: string): number =>
  pathLength(edgeOf(cap, piece, edge));

const seamsOf = ({ cap, step }: Told): readonly Seam[] =>
  step.seams.map((id) => cap.draft.pattern.seams.find((seam) => seam.id === id)!);

const along = (cap: Written, uses: readonly EdgeUse[]): number =>
  uses.reduce((sum, { piece, edge, from = 0, to }) => sum + (to ?? edgeLength(cap, piece, edge)) - from, 0);

/** The length of each of the step's seams, where its two sides are equally long. */
const plain = (told: Told): Sets =>
  seamsOf(told).map(({ a, b }) => {
    const [one, other] = [along(told.cap, a), along(told.cap, b)];
    return [Math.abs(one - other) <= 0.05 ? one : Number.NaN];
  });

/** That of all of them, where they are all alike. */
const alike = (told: Told): Sets => {
  const all = plain(told).map(([n]) => n!);
  return [[Math.max(...all) - Math.min(...all) <= 0.05 ? all[0]! : Number.NaN]];
};

/** The same before the first wash: of an edge that is sewn in part, that part. */
const alongNow = (cap: Written, uses: readonly EdgeUse[]): number =>
  uses.reduce((sum, use) => {
    const cut = cap.work.cutting.pieces.find(({ id }) => id === use.piece)!;
    const now = pathLength(cut.outline.find(({ name }) => name === use.edge)!.path);
    return sum + (now * along(cap, [use])) / edgeLength(cap, use.piece, use.edge);
  }, 0);

const nowAndThen = (told: Told): Sets =>
  seamsOf(told).map(({ a, b }, i) => {
    const [one, other] = [alongNow(told.cap, a), alongNow(told.cap, b)];
    return [Math.abs(one - other) <= 0.5 ? one : Number.NaN, plain(told)[i]![0]!];
  });
const unevenNow = (told: Told): Sets =>
  seamsOf(told).map(({ a, b }, i) => [alongNow(told.cap, a), alongNow(told.cap, b), plain(told)[i]![0]!]);
const easedNow = (told: Told): Sets =>
  seamsOf(told).map(({ a, b }, i) => [alongNow(told.cap, a), alongNow(told.cap, b), ...both(told)[i]!]);
const innerNow = (told: Told): Sets =>
  seamsOf(told).map(({ a }) => [alongNow(told.cap, a), along(told.cap, a)]);

const both = (told: Told): Sets => seamsOf(told).map(({ a, b }) => [along(told.cap, a), along(told.cap, b)]);
const inner = (told: Told): Sets => seamsOf(told).map(({ a }) => [along(told.cap, a)]);

const girth = ({ cap }: Told): Sets => [[cap.draft.finishedGirth]];

const marksOf = ({ cap, step }: Told, name: string): readonly PieceMark[] =>
  step.marks
    .filter((mark) => mark.name === name)
    .flatMap(({ piece }) => pieceOf(cap, piece).marks)
    .filter((mark) => 'name' in mark && mark.name === name);

const stretchLengths = (told: Told, name: string): Sets =>
  marksOf(told, name).flatMap((mark) => (mark.kind === 'stretch' ? [[pathLength(mark.path)]] : []));

/** From a point to a line in short straight parts, mm. */
const apart = (p: Point, line: readonly Point[]): number =>
  Math.min(
    ...line.slice(1).map((b, i) => {
      const a = line[i]!;
      const v = subtract(b, a);
      const t = Math.min(1, Math.max(0, dot(subtract(p, a), v) / dot(v, v) || 0));
      return distance(p, { x: a.x + t * v.x, y: a.y + t * v.y });
    }),
  );

/** Points of a path away from its ends. */
const inMiddle = (path: Path): readonly Point[] =>
  [0.2, 0.5, 0.8].map((part) => pointAt(path, part * pathLength(path)));

/** How far the line that the piece shows for a row lies from its edge, measured; NaN where it does not run level. */
export const shownAt = (cap: Written, row: Row): number => {
  const edge = edgeOf(cap, row.piece, row.edge);
  return levelFrom(cap, row, edge);
};

const levelFrom = (cap: Written, row: Row, from: Path): number => {
  const [shown] = rowMarks(pieceOf(cap, row.piece), [row]);
  const line = flatten(from, 0.01);
  const all = inMiddle(shown!.path).map((p) => apart(p, line));
  return Math.max(...all) - Math.min(...all) <= 0.05 ? all[1]! : Number.NaN;
};

const rows = ({ cap, step }: Told): Sets => step.rows.map((row) => [shownAt(cap, row)]);

/** From the row on the visor to the edge of the stiffener, which lies in the cover as it is drawn. */
const fromStiffener = ({ cap, step }: Told): Sets =>
  step.rows.map((row) => [levelFrom(cap, row, edgeOf(cap, 'stiffener', 'inner'))]);

/** The same from the visor's stitch line. */
const stitchFromStiffener = ({ cap }: Told): Sets => [
  [levelFrom(cap, { piece: 'visor', edge: 'inner', at: 0 }, edgeOf(cap, 'stiffener', 'inner'))],
];

const stiffenerInside = ({ cap }: Told): Sets => {
  const cover = cap.draft.pattern.pieces.some(({ id }) => id === 'visorUnder') ? 'visorUnder' : 'visor';
  const line = flatten(edgeOf(cap, cover, 'outer'), 0.005);
  return [
    [apart(pointAt(edgeOf(cap, 'stiffener', 'outer'), 0.5 * edgeLength(cap, 'stiffener', 'outer')), line)],
  ];
};

/** All rows round a brim: how many, how far apart, how far in the first. */
const brimRows = ({ cap, step }: Told): Sets => {
  const of = step.rows.filter(({ piece }) => piece === step.rows[0]!.piece);
  const all = of.map((row) => shownAt(cap, row)).sort((a, b) => a - b);
  return [[all.length, all[1]! - all[0]!, all[0]!]];
};

const washed =
  (cloth: 'outer' | 'lining') =>
  ({ cap }: Told): Sets => [[cap.work.cloths[cloth].shrinkLength, cap.work.cloths[cloth].shrinkWidth]];

/** A quarter inch between the clips on a curve of less than 80 mm radius, half an inch on others: common practice. */
const [SHARP, GENTLE] = [6.35, 12.7];
const clips = (told: Told): Sets =>
  seamsOf(told).map(({ a }) => [along(told.cap, a) / (2 * Math.PI) < 80 ? SHARP : GENTLE]);

const one = (n: number) => (): Sets => [[n]];
const value =
  (key: string) =>
  ({ cap }: Told): Sets => [[Number(cap.values[key])]];

/** Both ends of an elastic are sewn in by 15 mm, and it is 3 mm narrower than its casing: our own measures. */
const elastic = ({ cap }: Told): Sets => {
  const opening = edgeLength(cap, 'elasticCasing', 'bottom') - 2 * 15;
  const width = edgeLength(cap, 'elasticCasing', 'right') / 2;
  return [[width - 3, opening * (1 - Number(cap.values.elasticStretch)) + 2 * 15]];
};

const holes = (told: Told): Sets =>
  marksOf(told, 'buttonhole').flatMap((m) => (m.kind === 'buttonhole' ? [[distance(m.from, m.to)]] : []));
const buttonsApart = (told: Told): Sets => {
  const [a, b] = marksOf(told, 'button').flatMap((m) => (m.kind === 'button' ? [m.at] : []));
  return [[distance(a!, b!)]];
};
const eyelets = (told: Told): Sets =>
  marksOf(told, 'eyelet').flatMap((m) => (m.kind === 'eyelet' ? [[m.diameter]] : []));

/** The seam that a gathered edge goes into: the band is its shorter side. */
const gathered = ({ cap, step }: Told): Seam =>
  cap.draft.pattern.seams.find(({ id }) => id === step.id.replace(/(Gathers|Pleats)$/, ''))!;
const fullEdge = (told: Told): Sets => {
  const { a, b } = gathered(told);
  const [short, long] = [along(told.cap, a), along(told.cap, b)];
  return [[long, long / short - 1]];
};
const fullEdgeNow = (told: Told): Sets => [[alongNow(told.cap, gathered(told).b), ...fullEdge(told)[0]!]];
const drawnTo = (told: Told): Sets => [[along(told.cap, gathered(told).a)]];
const drawnToNow = (told: Told): Sets => [[alongNow(told.cap, gathered(told).a), ...drawnTo(told)[0]!]];

/** Every sentence of the guide that has numbers in it, each as #, and what those must be: measured here, on the pieces. */
const sentences: readonly (readonly [string, (told: Told) => Sets])[] = [
  ['Both edges are # long.', plain],
  ['Both edges are # round.', plain],
  ['Each pair of edges is # long.', alike],
  ['Each edge is # long. Both halves are alike.', alike],
  ['Each tie is # long.', alike],
  ['The visor’s inner edge and its place are both # long.', plain],
  ['Both edges are # long now, # after the wash.', nowAndThen],
  ['Both edges are # round now, # after the wash.', nowAndThen],
  ['Each pair of edges is # long now, # after the wash.', nowAndThen],
  ['Each edge is # long now, # after the wash. Both halves are alike.', nowAndThen],
  ['Each tie is # long now, # after the wash.', nowAndThen],
  ['The visor’s inner edge and its place are both # long now, # after the wash.', nowAndThen],
  ['One edge is # long now, the other #. Ease the longer one in. After the wash both are #.', unevenNow],
  [
    'Of each pair one edge is # long now, the other #. Ease the longer one in. After the wash both are #.',
    unevenNow,
  ],
  ['One edge is # long now, the other #. Ease the longer one in. After the wash they are # and #.', easedNow],
  ['The seam is # round now, # after the wash.', innerNow],
  ['The edge is # long now, # after the wash, # longer than the band.', fullEdgeNow],
  ['Drawn up, the edge is # round now, # after the wash.', drawnToNow],
  ['With the pleats folded the edge is # round now, # after the wash.', drawnToNow],
  ['Inside, the finished cap is # round after its first wash.', girth],
  ['Inside, it is # round after its first wash.', girth],
  ['One edge is # long, the other #. Ease the longer one in.', both],
  ['The seam is # round.', inner],
  ['Inside, the finished cap is # round.', girth],
  ['Inside, it is # round.', girth],
  ['The edge is # long, # longer than the band.', fullEdge],
  ['Drawn up, the edge is # round.', drawnTo],
  ['With the pleats folded the edge is # round.', drawnTo],
  ['Leave # open between the marks of the turning gap.', (told) => stretchLengths(told, 'turning gap')],
  ['Pull the … through the turning gap, which is # long.', (told) => stretchLengths(told, 'turning gap')],
  ['Sew each tie’s end down inside, # from the centre back.', (told) => stretchLengths(told, 'tie')],
  ['Work a buttonhole # long at each end of the strap.', holes],
  ['Sew the buttons on the band at their marks, # apart.', buttonsApart],
  // Our own measure.
  ['Cut a strip of cloth, # long and # wide.', () => [[60, 30]]],
  ['Work round it with close hand stitches, or press in a metal eyelet. The hole is # wide.', eyelets],
  ['It is smaller than the cover by # all round.', stiffenerInside],
  ['Topstitch the … # from the seam.', rows],
  ['Topstitch both sides, # from the seam.', rows],
  ['Topstitch # from the edge.', rows],
  ['Press it and topstitch # from the edge. That shuts the gap.', rows],
  ['Topstitch it all round, # from the edge….', rows],
  ['Topstitch all the way round, # from the lower edge.', rows],
  ['Topstitch the free edge down, # from it. Leave a gap at the back for the elastic.', rows],
  ['Topstitch the free edge down all round, # from it. Keep the ties clear of the needle.', rows],
  ['Topstitch the outer edge, the first row # from it. Buckram takes the needle.', rows],
  ['Sew one row, # from the outer edge.', rows],
  ['Sew # rows, # apart. The first lies # from the outer edge.', brimRows],
  ['Stay half a presser foot from the stiffener: #.', fromStiffener],
  ['Stay on the stitch line, # from the stiffener.', fromStiffener],
  ['Clip the allowance of the … every #, so that it opens round the curve.', clips],
  // Two millimetres, in the middle of what is usual for visors: common practice.
  ['Cut the stiffener # inside the stitch line, so that the needle passes beside it.', one(2)],
  ['Take a narrow foot: the stitch line runs # from the stiffener.', stitchFromStiffener],
  // Four inches: common practice.
  [
    'A brim of more than # droops: run millinery wire along the seam inside, or choose a stiffener.',
    one(101.6),
  ],
  ['Clip the visor’s allowance every #, so that it follows the edge.', one(SHARP)],
  ['Clip the brim’s allowance every #.', one(GENTLE)],
  // A quarter inch: common practice.
  ['Trim the allowance to #, the one below a little more.', one(6.35)],
  // Two rows, a quarter inch or so apart: common practice.
  ['Sew two rows of long stitches, # apart, one on each side of the stitch line.', one(6)],
  ['Gather the edge, draw it up over a button # across.', value('topButtonDiameter')],
  ['Draw # of elastic through the marked back; stitch across its ends.', value('elasticLength')],
  ['Elastic # × #, caught at both ends. Fold lengthwise.', elastic],
  [
    'Do not wash the outer cloth yet: its pieces are cut larger by what the first wash takes, # along the grain and # across.',
    washed('outer'),
  ],
  [
    'Do not wash the lining yet: its pieces are cut larger by what the first wash takes, # along the grain and # across.',
    washed('lining'),
  ],
];

/** What is not washed is made smaller by steam. */
const steamed: typeof sentences = sentences
  .filter(([pattern]) => pattern.includes('wash'))
  .map(([pattern, sets]) => [
    pattern.replaceAll('Do not wash', 'Do not steam').replaceAll('wash', 'steaming'),
    sets,
  ]);

/** Felt has no grain. */
const grainless: typeof sentences = steamed
  .filter(([pattern]) => pattern.includes('along the grain'))
  .map(([pattern, sets]) => [pattern.replace('along the grain', 'in length'), sets]);

const known = [...sentences, ...steamed, ...grainless].map(
  ([pattern, sets]) =>
    [new RegExp(`^${pattern.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replaceAll('…', '.*')}$`), sets] as const,
);

/** How near a number must be to what is measured, mm or parts of one: measuring a drawn curve is not finer. */
const NEAR = 0.02;

/** Whether the numbers of a sentence are those of what it speaks of. False for a sentence that is not known. */
export const isTrue = (sentence: Words, told: Told): boolean => {
  const bare = sentence.map((part) => (typeof part === 'string' ? part : '#')).join('');
  const said = sentence.flatMap((part) =>
    typeof part === 'string' ? [] : [Object.values(part).find((n) => typeof n === 'number')!],
  );
  const sets = known.find(([pattern]) => pattern.test(bare))?.[1](told) ?? [];
  return sets.some(
    (set) => set.length === said.length && set.every((n, i) => Math.abs(n - said[i]!) <= NEAR),
  );
};
