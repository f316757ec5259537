import type { ClothSpec } from '../cloth/cloth.ts';
import type { Cloth } from '../pattern/piece.ts';
import type { EdgeUse } from '../pattern/seam.ts';
import type { SeamReport } from '../pattern/seam-check.ts';
import { mm, type Quantity, type Words, words } from '../words.ts';
import { needleForAll } from './needle.ts';
import { type Row, rowsOf } from './rows.ts';
import type { MarkUse, Settings } from './step.ts';
import { STITCH, seamStitch } from './stitches.ts';
import { pieceOf, piecesIn, usesOf, type Work } from './work.ts';

/** A piece's name inside a sentence: "Visor, upper" is the upper visor. */
export const spoken = (name: string): string => name.toLowerCase().split(', ').reverse().join(' ');

export const nameOf = (work: Work, id: string): string => spoken(pieceOf(work, id)?.name ?? id);

/** The same without which of them it is: "Side band, front" is a side band. */
export const plainName = (work: Work, id: string): string =>
  (pieceOf(work, id)?.name ?? id).toLowerCase().split(', ')[0]!;

export const clothWord = (cloth: Cloth): string => (cloth === 'outer' ? 'outer cloth' : cloth);

/** "a", "a and b", "a, b and c". */
export const listed = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

const NUMBERS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight'];
export const numbered = (n: number): string => NUMBERS[n] ?? String(n);

/** What the notches of some seams are called when there are several of them. */
const several: Readonly<Record<string, string>> = {
  side: 'sides',
  seam: 'seams',
  'middle of a quarter': 'middles of the quarters',
  'middle of the quarter': 'middles of the quarters',
  'middle of the gore': 'middles of the gores',
  'visor end': 'visor ends',
  'turn of the crown': 'turns of the crown',
  'widest place': 'widest places',
  'edge of the opening': 'edges of the opening',
};

/** Which side of a seam a piece is on. */
export const sideOf = ({ seam }: SeamReport, piece: string | undefined): 'a' | 'b' =>
  seam.a.some((use) => use.piece === piece) ? 'a' : 'b';

/** The notches that lie in some seams. */
export const notchesIn = (work: Work, reports: readonly SeamReport[]): readonly MarkUse[] => {
  const used = new Set(usesOf(reports).map(({ piece, edge }) => `${piece} ${edge}`));
  const found = piecesIn(reports).flatMap((id) =>
    (pieceOf(work, id)?.notches ?? [])
      .filter(({ edge }) => used.has(`${id} ${edge}`))
      .map(({ name }): MarkUse => ({ piece: id, name })),
  );
  return found.filter(
    (mark, i) => found.findIndex(({ piece, name }) => piece === mark.piece && name === mark.name) === i,
  );
};

/**
 * "Match the centre front, sides and seams." Nothing where there is no notch. A ring is walked from the centre back:
 * where both sides have a seam there instead of a notch, "back seams" too.
 */
export const matchWords = (marks: readonly MarkUse[], report?: SeamReport): readonly Words[] => {
  const named = [...new Set(marks.map(({ name }) => several[name] ?? name))];
  const names = [...named, ...(!named.includes('centre back') && meetsInSeams(report) ? ['back seams'] : [])];
  return names.length === 0 ? [] : [words`Match the ${listed(names)}.`];
};

/** Whether both sides of a ring begin with the end of an edge. */
const meetsInSeams = (report: SeamReport | undefined): boolean =>
  report?.seam.ring === true && [report.seam.a, report.seam.b].every(([first]) => !first?.from);

/** The marks of a name on some pieces. */
export const marksNamed = (work: Work, ids: readonly string[], name: string): readonly MarkUse[] =>
  ids.flatMap((id) =>
    pieceOf(work, id)?.marks.some((mark) => 'name' in mark && mark.name === name)
      ? [{ piece: id, name }]
      : [],
  );

/** The cloths that some pieces are cut from, as far as a needle goes through them. */
const specsOf = (work: Work, ids: readonly string[]): readonly ClothSpec[] => [
  ...new Set(
    ids.flatMap((id) =>
      (pieceOf(work, id)?.cuts ?? []).flatMap(({ cloth }) =>
        cloth === 'stiffener' ? [] : [work.cloths[cloth]],
      ),
    ),
  ),
];

/** The needle for some pieces and whatever else a step sets. */
export const needleSettings = (work: Work, ids: readonly string[], set: Settings = {}): Settings => {
  const needle = needleForAll(specsOf(work, ids));
  return { ...(needle === null ? {} : { needle }), ...set };
};

/** The rows of stitches along some edges. */
export const rowsAlong = (work: Work, uses: readonly Pick<EdgeUse, 'piece' | 'edge'>[]): readonly Row[] =>
  rowsOf(work).filter(({ piece, edge }) => uses.some((use) => use.piece === piece && use.edge === edge));

interface Topstitched {
  readonly rows: readonly Row[];
  readonly words: readonly Words[];
  readonly set: Settings;
  /** The settings where the row holds down the allowances of a seam, which makes it a lapped one. */
  readonly lapped: Settings;
}

/** The rows that a step sews, and how far in the first of them lies; `say` tells of it. Nothing where there is none. */
export const topstitched = (rows: readonly Row[], say: (at: Quantity) => Words): Topstitched => {
  const [first] = rows;
  return first === undefined
    ? { rows, words: [], set: {}, lapped: {} }
    : {
        rows,
        words: [say(mm(first.at))],
        set: { topstitch: first.at },
        lapped: { topstitch: first.at, trade: { stitch: '301', seam: 'LS' } },
      };
};

/** The settings of a plain machine seam. */
export const seamSettings = (work: Work, reports: readonly SeamReport[], set: Settings = {}): Settings => {
  const ids = piecesIn(reports);
  const kind = reports[0]?.seam.kind;
  const allowance = kind === undefined ? 0 : work.pattern.allowances[kind];
  return needleSettings(work, ids, {
    stitch: seamStitch(specsOf(work, ids)),
    ...(allowance > 0 ? { allowance } : {}),
    trade: { stitch: '301', seam: 'SS' },
    ...set,
  });
};

export const basteSettings = (work: Work, reports: readonly SeamReport[]): Settings =>
  seamSettings(work, reports, { stitch: STITCH.baste });

/** A quick hand sews so much of a seam in a minute, pins and iron with it, and a careful one so much, mm: our own estimate. */
const PACE = { quick: 150, careful: 70 };

/** Minutes for some seams and a little more for each. */
export const seamMinutes = (reports: readonly SeamReport[], each = 2): readonly [number, number] => {
  const length = reports.reduce((sum, { a, b }) => sum + Math.max(a, b), 0);
  const n = reports.length;
  return [Math.ceil(length / PACE.quick + each * n), Math.ceil(length / PACE.careful + 2 * each * n)];
};

/** The names of some pieces, each once. */
export const piecesListed = (work: Work, ids: readonly string[]): string =>
  listed([...new Set(ids.map((id) => nameOf(work, id)))]);
